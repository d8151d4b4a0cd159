package org.ellwand.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    @ParameterizedTest
    @CsvSource({
        "statistc, statistic",
        "limt, limit",
        "liimt, limit",
        "STATISTIC, statistic",
        "third octave, third-octave",
        "octaves, octave"
    })
    void aSlipIsKnown(String written, String meant) {
        assertThat(Nearest.to(written, List.of("limit", "octave", "statistic", "third-octave")))
                .contains(meant);
    }

    /** Two fifths of the letters are another word: who writes a third octave so does not mean an octave. */
    @Test
    void anotherWordIsNoSlip() {
        assertThat(Nearest.to("1/3 octave", List.of("octave", "third-octave"))).isEmpty();
        assertThat(Nearest.to("average", List.of("mean", "median"))).isEmpty();
    }

    /** Neighbours exchanged are one slip; the numbers are counted by hand. */
    @ParameterizedTest
    @CsvSource({"'', abc, 3", "abc, '', 3", "kitten, sitting, 3", "ab, ba, 1", "abcd, badc, 2", "ca, abc, 3"})
    void slipsAreCounted(String from, String to, int slips) {
        assertThat(Nearest.distance(from, to)).isEqualTo(slips);
    }
}
