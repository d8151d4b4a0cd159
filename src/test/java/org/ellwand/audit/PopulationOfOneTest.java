package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/** Several people who wore one and the same sample, several samples in one ear, and cells of two sessions; all invented. */
class PopulationOfOneTest {
    private static final String MEAN =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: at least 18 dB, ";

    private static Bench bench(String cause, double sizeDb, SharedBy sharedBy) {
        return new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0, SharedBy.INSERTION, false)
                .cause("reading", 0, SharedBy.READING, true)
                .cause(cause, sizeDb, sharedBy, false);
    }

    private static Session people(double unitDb) {
        Bench bench = bench("unit", unitDb, SharedBy.UNIT);
        for (int head = 1; head <= 3; head++) {
            String ear = "ear=left-" + head + ", head=h" + head;
            bench.reading("device=open ear, stimulus=n94, " + ear, 1000, 80)
                    .reading("device=Skerry, stimulus=n94, insertion=1, unit=SN-1, " + ear, 1000, 60 - 0.1 * head);
        }
        return bench.session();
    }

    private static Session samples(double earDb) {
        Bench bench = bench("ear", earDb, SharedBy.EAR);
        String ear = "ear=left-1, head=h1";
        bench.reading("device=open ear, stimulus=n94, " + ear, 1000, 80);
        for (int unit = 1; unit <= 3; unit++) {
            bench.reading(
                    "device=Skerry, stimulus=n94, insertion=1, unit=SN-" + unit + ", " + ear, 1000, 60 - 0.1 * unit);
        }
        return bench.session();
    }

    private static double u(Judgement judgement) {
        return judgement.standardUncertainty().orElseThrow();
    }

    /** The scatter of 0.1 dB between the three says nothing of the one sample that all of them wore: 5 dB stay. */
    @Test
    void whatTheOneSampleSharesStaysInAMeanOverPeople() {
        Judgement both = Bench.judge(MEAN + "ears: mean, units: mean", people(5));
        assertThat(u(both)).isCloseTo(5, within(0.02));
        assertThat(both.verdict()).isEqualTo(Verdict.MARGINAL);
        // Where the sentence speaks of this sample alone, its deviation is part of what is claimed.
        assertThat(u(Bench.judge(MEAN + "ears: mean", people(5)))).isLessThan(0.2);
    }

    @Test
    void whatTheOneEarSharesStaysInAMeanOverSamples() {
        Judgement both = Bench.judge(MEAN + "ears: mean, units: mean", samples(5));
        assertThat(u(both)).isCloseTo(5, within(0.02));
        assertThat(both.verdict()).isEqualTo(Verdict.MARGINAL);
    }

    /** Both firmwares in the first session, one of them in the second too: whichever is named first, the same cells pair up. */
    @Test
    void theOrderOfAComparisonChangesNoPair() {
        Session first = bench("session", 0.3, SharedBy.SESSION)
                .reading("device=open ear, stimulus=n94, ear=left", 1000, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1, firmware=2.0, ear=left", 1000, 60)
                .reading("device=Skerry, stimulus=n94, insertion=1, firmware=2.1, ear=left", 1000, 59)
                .session();
        Session second = new Bench("later", Resolution.OCTAVE)
                .cause("insertion", 0, SharedBy.INSERTION, false)
                .cause("reading", 0.3, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94, ear=left", 1000, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1, firmware=2.1, ear=left", 1000, 57)
                .session();
        String rule =
                "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, between: {firmware: [%s]},"
                        + " limit: %s";
        Judgement newLessOld = Bench.judge(rule.formatted("'2.1', '2.0'", "at most 2 dB"), first, second);
        Judgement oldLessNew = Bench.judge(rule.formatted("'2.0', '2.1'", "at least -2 dB"), first, second);
        assertThat(newLessOld.cells()).hasSize(2);
        assertThat(oldLessNew.cells()).hasSize(2);
        assertThat(newLessOld.value()).hasValue(3);
        assertThat(oldLessNew.value()).hasValue(-3);
    }
}
