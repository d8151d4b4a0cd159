package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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

    /** s = 0.2 · √35 over 20 units, and the one reading of the open ear, 0.3 dB, which is in all of them alike. */
    @Test
    void aMeanOverUnitsHoldsTheErrorOfTheirOpenEar() {
        Bench bench = new Bench("line-01", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.3, SharedBy.READING, true);
        double u = Bench.judge(RULE.replace("each", "mean") + "at least 15 dB", lot(bench, 1))
                .standardUncertainty()
                .orElseThrow();
        // s/√n with t of 19 degrees of freedom beside the normal 0.3 dB: half the central 68.27 %, integrated with
        // SciPy 1.17.
        assertThat(u).isCloseTo(0.407499, within(1e-5));
    }

    /** Nothing declared of the readings: two takes of the open ear, 0.4 dB apart, tell as much (t of 1 degree of freedom). */
    @Test
    void orTheScatterOfItsTakesAndOneTakeWillNotDo() {
        Bench one = new Bench("line-01", Resolution.OCTAVE).cause("insertion", 0.5, SharedBy.INSERTION, false);
        Judgement marginal = Bench.judge(RULE.replace("each", "mean") + "at least 15 dB", lot(one, 1));
        assertThat(marginal.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(marginal.reason().orElseThrow()).startsWith("one open-ear take");
        Bench two = new Bench("line-01", Resolution.OCTAVE).cause("insertion", 0.5, SharedBy.INSERTION, false);
        Judgement known = Bench.judge(RULE.replace("each", "mean") + "at least 15 dB", lot(two, 2));
        assertThat(known.cells().get(0).contributions())
                .filteredOn(c -> c.instance().equals("open ear"))
                .singleElement()
                .satisfies(c -> assertThat(c.effect()).isCloseTo(0.2, within(1e-9)));
    }

    private static Session lot(Bench bench, int takes) {
        for (int t = 1; t <= takes; t++) {
            bench.reading("device=open ear, stimulus=n94, take=" + t, 1000, 80 + 0.4 * t);
        }
        for (int i = 0; i < 20; i++) {
            bench.reading("device=Skerry, stimulus=n94, insertion=1, unit=SN-" + i, 1000, 80 - 18 - 0.2 * i);
        }
        return bench.session();
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
