package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/** Twenty units, one insertion each, at 18 dB to 21.8 dB in steps of 0.2 dB; u = 0.5 dB. Invented. */
class LotTest {
    private static final String RULE =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, units: each, limit: ";

    private static Session lot(int units) {
        Bench bench = new Bench("line-01", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80);
        for (int i = 0; i < units; i++) {
            String unit = String.format(java.util.Locale.ROOT, "SN-%02d", i);
            bench.reading("device=Skerry, stimulus=n94, insertion=1, unit=" + unit, 1000, 80 - 18 - 0.2 * i);
        }
        return bench.session();
    }

    @Test
    void yieldCapabilityWorstUnitAndTestLimits() {
        // Clopper and Pearson, 19 of 20: 0.7838939 (beta quantile, computed apart); 20 of 20: 0.05^(1/20) = 0.8609.
        // mean 19.9, s = 0.2 · √35 = 1.1832; (19.9 − 18.1)/(3 · 1.1832) = 0.507; 1.6449 · 0.5 = 0.8224.
        assertThat(Bench.judge(RULE + "at least 18.1 dB", lot(20)).notes())
                .contains(
                        "19 of 20 units lie inside the limit as measured, so that with 95 % confidence at least 78.3 % of"
                                + " the lot do; capability 0.51 (mean 19.9, standard deviation 1.18); worst unit SN-00"
                                + " at 18 dB",
                        "to accept a unit with the claim's confidence, measured as these were (guard band 0.82 dB): at"
                                + " least 18.92 dB");
        assertThat(Bench.judge(RULE + "17.5 to 22.5 dB", lot(20)).notes())
                .anyMatch(note -> note.startsWith("20 of 20 units") && note.contains("at least 86 % of the lot do"))
                .anyMatch(note -> note.endsWith("at least 18.32 dB and at most 21.68 dB"));
    }

    @Test
    void aLimitTooNarrowForTheGaugeHasNoTestLimits() {
        assertThat(Bench.judge(RULE + "19.5 to 20.5 dB", lot(20)).notes())
                .anyMatch(note -> note.endsWith("no value will do, the uncertainty is too wide for this limit"));
    }

    @Test
    void aHandfulOfUnitsIsNoLot() {
        assertThat(Bench.judge(RULE + "at least 17 dB", lot(3)).notes()).noneMatch(note -> note.contains("lot"));
    }
}
