package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parts of curves that share a list of bands, and of others; numbers are invented. */
class LevelCurveTest {
    private static List<Band> octaves() {
        return IntStream.rangeClosed(-3, 3)
                .mapToObj(i -> new Band(Resolution.OCTAVE, i))
                .toList();
    }

    private static LevelCurve curve(List<Band> bands) {
        return new LevelCurve(
                bands, IntStream.range(0, bands.size()).mapToDouble(i -> 10 * i).toArray());
    }

    /** 125, 250, 500, 1000, 2000, 4000 and 8000 Hz hold 0 to 60. */
    @ParameterizedTest
    @CsvSource({"0, 99999, 0, 7", "250, 1000, 10, 3", "251, 999, 20, 1", "8000, 99999, 60, 1", "300, 400, 0, 0"})
    void bothEndsBelongToAPart(double fromHz, double toHz, double first, int size) {
        LevelCurve part = curve(octaves()).between(fromHz, toHz);
        assertThat(part.size()).isEqualTo(size);
        assertThat(part.bands()).hasSize(size);
        if (size > 0) {
            assertThat(part.numbers()[0]).isEqualTo(first);
            assertThat(part.lowest().nominalHz()).isBetween(fromHz, toHz);
        }
    }

    @Test
    void curvesHaveTheSameBandsHoweverTheyWereCut() {
        List<Band> shared = octaves();
        LevelCurve part = curve(shared).between(250, 4000).between(500, 2000);
        assertThat(part.hasBandsOf(curve(shared).between(500, 2000).negated())).isTrue();
        assertThat(part.hasBandsOf(curve(octaves()).between(500, 2000))).isTrue();
        assertThat(part.hasBandsOf(curve(shared).between(500, 4000))).isFalse();
        assertThat(part.hasBandsOf(curve(shared).between(250, 1000))).isFalse();
        assertThat(LevelCurve.EMPTY.hasBandsOf(curve(shared).between(300, 400))).isTrue();
        assertThat(part.with(new double[] {7, 8, 9}).levelOr(new Band(Resolution.OCTAVE, 0), 0))
                .isEqualTo(8);
    }
}
