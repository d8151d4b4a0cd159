package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.demo.Bands;
import org.ellwand.demo.Ear;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.api.Test;

/**
 * Heads with two ears that differ by 3 dB and 0.3 octaves of their resonance, and a plug whose fits differ from ear to ear by so many dB in
 * each of three broad parts of the frequency range.
 */
class EarsInPlaceTest {
    private static final int HEADS = 1000;

    /** A head drawn by chance. */
    private record Head(double fitDb, NormalStream draw) {
        static Head of(int seed, double fitDb) {
            return new Head(fitDb, new NormalStream(Seeds.of("ears in place", Integer.toString(seed))));
        }

        List<Session> sessions(boolean swapped) {
            Ear left = ear("left");
            Ear right = ear("right");
            return List.of(side("left", left, swapped ? right : left), side("right", right, swapped ? left : right));
        }

        private Ear ear(String side) {
            return new Ear(side, "crew-01", 16 + 3 * draw.next(), 2700 * Math.pow(2, 0.3 * draw.next()), 0, 0);
        }

        private Session side(String side, Ear open, Ear inPlace) {
            double[] fit =
                    IntStream.range(0, 3).mapToDouble(i -> fitDb * draw.next()).toArray();
            DoubleUnaryOperator takesOff = f -> 20
                    + fit[0] * Bands.bell(f, 1200, 1)
                    + fit[1] * Bands.bell(f, 2800, 1)
                    + fit[2] * Bands.bell(f, 6500, 1);
            MadeSession made = new MadeSession(side, "crew-01-" + side)
                    .cause("reading", 0.3, SharedBy.READING)
                    .pink(94)
                    .reading("device=open ear, stimulus=pink-94", f -> 81 + open.openGainDb(f) + 0.3 * draw.next());
            for (int insertion = 1; insertion <= 3; insertion++) {
                made.reading(
                        "device=Skerry, setting=flood, stimulus=pink-94, insertion=" + insertion,
                        f -> 81 + inPlace.openGainDb(f) - takesOff.applyAsDouble(f) + 0.3 * draw.next());
            }
            return made.session();
        }
    }

    private static List<Finding> found(int seed, double fitDb, boolean swapped) {
        return Inspecting.by(new EarSwap(), Head.of(seed, fitDb).sessions(swapped));
    }

    private static long accused(double fitDb, boolean swapped) {
        return IntStream.range(0, HEADS)
                .filter(seed -> !found(seed, fitDb, swapped).isEmpty())
                .count();
    }

    /** Fits that differ by 4 dB do more than the ears, and fewer than 1 in 1000 do it just so; 5 or more would come of that less than once in 250 times. */
    @Test
    void fitsThatDifferAreNotTakenForASwap() {
        assertThat(accused(1, false)).isLessThanOrEqualTo(4);
        assertThat(accused(4, false)).isLessThanOrEqualTo(4);
    }

    /** Where the ears differ by less than 2 dB nothing is said: that is so in some heads of ten. */
    @Test
    void aSwapIsFoundWhereEarsDifferAndFitsDoNot() {
        assertThat(accused(0.5, true)).isGreaterThan(HEADS / 2);
        Finding finding = IntStream.range(0, HEADS)
                .mapToObj(seed -> found(seed, 0.5, true))
                .filter(findings -> !findings.isEmpty())
                .findFirst()
                .orElseThrow()
                .get(0);
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.reading()).isEqualTo("ear=crew-01-left");
        assertThat(finding.text()).endsWith("were left and right swapped?");
    }
}
