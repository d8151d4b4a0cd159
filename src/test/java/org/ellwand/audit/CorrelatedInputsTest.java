package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Computation;
import org.ellwand.quantity.Outcome;
import org.junit.jupiter.api.Test;

/**
 * JCGM 100:2008, H.2: five simultaneous observations of voltage, current and phase, which are correlated. The data were
 * read (test data of a general uncertainty calculator, sandialabs/suncal); R, X, Z and their u are secondary (its tests),
 * correlations from memory; all further digits are computed.
 *
 * <p>The observations go in as five insertions, three bands each, whose numbers alone matter. The scatter of the
 * insertions gives the covariances; {@link Sensitivity} carries them on to resistance, reactance and impedance.
 */
class CorrelatedInputsTest {
    private static final double[] VOLT = {5.007, 4.994, 5.005, 4.990, 4.999};
    private static final double[] MILLIAMPERE = {19.663, 19.639, 19.640, 19.685, 19.678};
    private static final double[] RADIAN = {1.0456, 1.0438, 1.0468, 1.0428, 1.0433};
    private static final double[] MEANS = {4.9990, 19.6610, 1.04446};
    private static final String EVERY_BAND = "quantity: attenuation, setting: flood, level: 94 dB SPL,"
            + " bands: 1 kHz to 1.6 kHz, statistic: every band, limit: at least 15 dB";

    private static final Estimates INPUTS = estimates(i -> new double[] {VOLT[i], MILLIAMPERE[i], RADIAN[i]});

    /** Resistance, reactance and impedance, in ohms, of one reading: volts, milliamperes, radians. */
    private static final class Impedance implements Computation {
        @Override
        public int size() {
            return 3;
        }

        @Override
        public boolean isLinear() {
            return false;
        }

        @Override
        public void compute(double[][] levelsDb, double[] out) {
            out[2] = 1000 * levelsDb[0][0] / levelsDb[0][1];
            out[0] = out[2] * Math.cos(levelsDb[0][2]);
            out[1] = out[2] * Math.sin(levelsDb[0][2]);
        }
    }

    private static Estimates estimates(IntFunction<double[]> row) {
        Bench bench =
                new Bench("crew-01", Resolution.THIRD_OCTAVE).reading("device=open ear, stimulus=n94", 1000, 0, 0, 0);
        for (int i = 0; i < VOLT.length; i++) {
            bench.reading("device=Skerry, setting=flood, stimulus=n94, insertion=" + (i + 1), 1000, row.apply(i));
        }
        Session session = bench.session();
        return Workings.of(EVERY_BAND, Outcome.CURVE, session).estimates();
    }

    /** An attenuation by an open ear of 0 is the number with its sign turned, which no product of two errors notices. */
    @Test
    void meansAndTheirUncertainties() {
        double[] published = {0.0032, 0.0095, 0.00075};
        double[] computed = {0.00320936, 0.00947101, 0.000752064};
        for (int p = 0; p < 3; p++) {
            assertThat(-INPUTS.value[p]).isCloseTo(MEANS[p], within(1e-9));
            assertThat(INPUTS.groups.get(0).scatter(p).scale())
                    .isCloseTo(published[p], within(published[p] * 0.02))
                    .isCloseTo(computed[p], within(computed[p] * 2e-6));
        }
        assertThat(INPUTS.groups.get(0).degreesOfFreedom()).isEqualTo(4);
    }

    @Test
    void correlationOfTheMeans() {
        double[][] e = columns();
        assertThat(correlation(e[0], e[1])).isCloseTo(-0.36, within(0.005)).isCloseTo(-0.355311, within(1e-6));
        assertThat(correlation(e[0], e[2])).isCloseTo(0.86, within(0.005)).isCloseTo(0.857624, within(1e-6));
        assertThat(correlation(e[1], e[2])).isCloseTo(-0.65, within(0.005)).isCloseTo(-0.645111, within(1e-6));
    }

    @Test
    void valuesOfTheMeans() {
        double[] out = new double[3];
        new Impedance().compute(new double[][] {MEANS.clone()}, out);
        assertThat(out[0]).isCloseTo(127.732170, within(1e-6));
        assertThat(out[1]).isCloseTo(219.846512, within(1e-6));
        assertThat(out[2]).isCloseTo(254.259702, within(1e-6));
    }

    @Test
    void propagatedWithTheirCorrelation() {
        double[][] e = columns();
        double[][] out = effects(IntStream.range(0, 5)
                .mapToObj(c -> factor("row " + c, e[0][c], e[1][c], e[2][c]))
                .toList());
        assertThat(length(out[0])).isCloseTo(0.071, within(0.0005)).isCloseTo(0.0710714, within(1e-6));
        // 0.2956 as computed rounds to 0.296 where the guide prints 0.295.
        assertThat(length(out[1])).isCloseTo(0.295, within(0.001)).isCloseTo(0.295582, within(1e-6));
        assertThat(length(out[2])).isCloseTo(0.236, within(0.0005)).isCloseTo(0.236336, within(1e-6));
        assertThat(correlation(out[0], out[1])).isCloseTo(-0.588, within(0.001));
        assertThat(correlation(out[0], out[2])).isCloseTo(-0.485, within(0.001));
        assertThat(correlation(out[1], out[2])).isCloseTo(0.993, within(0.001));
    }

    /** One draw per quantity instead of one per observation: the known wrong answer (computed). */
    @Test
    void propagatedAsIfIndependent() {
        double[][] e = columns();
        double[][] out = effects(List.of(
                factor("volt", length(e[0]), 0, 0),
                factor("milliampere", 0, length(e[1]), 0),
                factor("radian", 0, 0, length(e[2]))));
        assertThat(length(out[0])).isCloseTo(0.194544, within(2e-6));
        assertThat(length(out[1])).isCloseTo(0.200909, within(2e-6));
        assertThat(length(out[2])).isCloseTo(0.204076, within(2e-6));
    }

    /** The second approach: each observation gives R, X and Z; then their means (from memory) and scatter (computed). */
    @Test
    void observationByObservation() {
        Estimates each = estimates(i -> {
            double[] out = new double[3];
            new Impedance().compute(new double[][] {{VOLT[i], MILLIAMPERE[i], RADIAN[i]}}, out);
            return out;
        });
        double[] means = {127.732, 219.847, 254.260};
        double[] computed = {127.731630, 219.846895, 254.260050};
        double[] scatter = {0.0712735, 0.295489, 0.236248};
        for (int p = 0; p < 3; p++) {
            assertThat(-each.value[p]).isCloseTo(means[p], within(0.0005)).isCloseTo(computed[p], within(1e-6));
            assertThat(each.groups.get(0).scatter(p).scale()).isCloseTo(scatter[p], within(1e-6));
        }
    }

    private static double[][] columns() {
        Group group = INPUTS.groups.get(0);
        return IntStream.range(0, 3)
                .mapToObj(p -> IntStream.range(0, group.columns())
                        .mapToDouble(c -> group.effect(p, c))
                        .toArray())
                .toArray(double[][]::new);
    }

    private static Factor factor(String key, double volt, double milliampere, double radian) {
        return new Factor(
                new Factor.Name("", "observation", key, Double.NaN),
                SharedBy.INSERTION,
                new Entries().add(0, 0, volt).add(0, 1, milliampere).add(0, 2, radian));
    }

    /** What each factor does to R, X and Z. */
    private static double[][] effects(List<Factor> factors) {
        Sensitivity sensitivity = Sensitivity.of(new Impedance(), new double[][] {MEANS.clone()}, List.of(0));
        return IntStream.range(0, 3)
                .mapToObj(p -> factors.stream()
                        .mapToDouble(f -> sensitivity.effects(f)[p])
                        .toArray())
                .toArray(double[][]::new);
    }

    private static double product(double[] a, double[] b) {
        return IntStream.range(0, a.length).mapToDouble(i -> a[i] * b[i]).sum();
    }

    private static double length(double[] a) {
        return Math.sqrt(product(a, a));
    }

    private static double correlation(double[] a, double[] b) {
        return product(a, b) / length(a) / length(b);
    }
}
