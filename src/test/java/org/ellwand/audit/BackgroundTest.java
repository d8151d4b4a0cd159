package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.ellwand.acoustics.Bound;
import org.ellwand.check.MadeSession;
import org.ellwand.demo.Bands;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.api.Test;

/** What a background does to verdicts and uncertainties. */
class BackgroundTest {
    private static final String OUTPUT =
            "quantity: output level, limit: at most 60 dB SPL, level: 60 dB SPL, bands: 1 kHz, statistic: mean,"
                    + " referred to: eardrum";

    /** u'² = (u² + (q·u_A)²) / (1 − q)², q = 0.1: 0.5 dB become 0.5583 dB. */
    @Test
    void theUncertaintyGrowsAsTheFormulaSays() {
        Session session = new MadeSession("yard")
                .cause("reading", 0.5, SharedBy.READING)
                .cause("insertion", 0, SharedBy.INSERTION)
                .pink(60)
                .quiet()
                .reading("device=Skerry, stimulus=pink-60, insertion=1", f -> 40)
                .reading("device=Skerry, stimulus=hush, insertion=1", f -> 30)
                .session();
        double expected = Math.sqrt(0.25 + 0.01 * 0.25) / 0.9;
        assertThat(Bench.judge(OUTPUT, session).standardUncertainty().orElseThrow())
                .isCloseTo(expected, within(1e-6))
                .isCloseTo(simulated(), within(0.01));
    }

    /** Both readings drawn and subtracted, apart from the program. */
    private static double simulated() {
        NormalStream draw = new NormalStream(Seeds.of("background"));
        double[] levels = new double[100_000];
        for (int i = 0; i < levels.length; i++) {
            double level = Math.pow(10, (40 + 0.5 * draw.next()) / 10);
            levels[i] = 10 * Math.log10(level - Math.pow(10, (30 + 0.5 * draw.next()) / 10));
        }
        Arrays.sort(levels);
        return (levels[84_135] - levels[15_865]) / 2;
    }

    /** What a session shares moves a level and its background alike. */
    @Test
    void calibrationDoesNotGrow() {
        Session session = new MadeSession("yard")
                .cause("calibration", 0.5, SharedBy.SESSION)
                .cause("insertion", 0, SharedBy.INSERTION)
                .pink(60)
                .quiet()
                .reading("device=Skerry, stimulus=pink-60, insertion=1", f -> 40)
                .reading("device=Skerry, stimulus=hush, insertion=1", f -> 30)
                .session();
        assertThat(Bench.judge(OUTPUT, session).standardUncertainty().orElseThrow())
                .isCloseTo(0.5, within(1e-9));
    }

    /** Pink noise over a floor, and a plug; what is read is the energy sum. */
    private static Session plug(double levelDb, double floorDb, double attenuationDb) {
        double bandDb = levelDb - 10 * Math.log10(MadeSession.THIRDS.size());
        return new MadeSession("yard")
                .cause("reading", 0.2, SharedBy.READING)
                .cause("insertion", 0.5, SharedBy.INSERTION)
                .pink(levelDb)
                .quiet()
                .reading("device=open ear, stimulus=pink-" + Math.round(levelDb), f -> bandDb)
                .reading(
                        "device=Skerry, stimulus=pink-" + Math.round(levelDb) + ", insertion=1",
                        f -> Bands.energySumDb(bandDb - attenuationDb, floorDb))
                .reading("device=Skerry, stimulus=hush, insertion=1", f -> floorDb)
                .session();
    }

    private static String atLeast(double levelDb, double limitDb, String statistic) {
        return "quantity: attenuation, limit: at least " + limitDb + " dB, level: " + levelDb
                + " dB SPL, bands: 125 Hz to 8 kHz, statistic: " + statistic;
    }

    /** 60 − 13.2 − 25 − 10 = 11.8 dB over the 21 bands; trade practice prints 12 dB for 19. */
    @Test
    void aSoundTooSoftForAClaimLeavesItUntested() {
        Judgement judgement = Bench.judge(atLeast(60, 25, "mean"), plug(60, 25, 30));
        assertThat(judgement.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(judgement.reason())
                .contains("not measurable at this level: 60 dB SPL shows at most 11.8 dB above this background;"
                        + " 74 dB SPL would do");
    }

    @Test
    void theLevelThatWouldDoDoes() {
        assertThat(Bench.judge(atLeast(74, 25, "mean"), plug(74, 25, 26.5)).verdict())
                .isEqualTo(Verdict.PASS);
    }

    /** 21.8 dB between open ear and floor: 15 dB at least are sure, though 6 dB are missing to a measured level. */
    @Test
    void aBoundSupportsAClaim() {
        Judgement judgement = Bench.judge(atLeast(60, 15, "every band"), plug(60, 25, 30));
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
        assertThat(judgement.cells().get(0).bands()).allMatch(p -> p.bound() == Bound.AT_LEAST);
    }

    @Test
    void aBoundRefutesNothing() {
        Judgement judgement =
                Bench.judge(atLeast(60, 15, "every band").replace("at least", "at most"), plug(60, 25, 30));
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.reason().orElseThrow())
                .startsWith("too near the background for more than a bound: 125, 160,");
    }

    /** The open ear in quiet alone tells of a floor of 25 dB; a level 3 dB above it may be the room's for the most part. */
    @Test
    void aRoomThatMayBeMostOfTheLevelRefutesNothing() {
        double bandDb = 60 - 10 * Math.log10(MadeSession.THIRDS.size());
        Session session = new MadeSession("yard")
                .cause("reading", 0.2, SharedBy.READING)
                .cause("insertion", 0.5, SharedBy.INSERTION)
                .pink(60)
                .quiet()
                .reading("device=open ear, stimulus=pink-60", f -> bandDb)
                .reading("device=open ear, stimulus=hush", f -> 25)
                .reading("device=Skerry, stimulus=pink-60, insertion=1", f -> 28)
                .session();
        Judgement refuted = Bench.judge(atLeast(60, 25, "mean"), session);
        assertThat(refuted.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(refuted.reason())
                .contains(
                        "the data themselves are in doubt (room noise in session yard), which could have brought this about;"
                                + " without that finding the verdict would be fail");
        assertThat(Bench.judge(atLeast(60, 15, "mean"), session).verdict()).isEqualTo(Verdict.PASS);
    }

    /** Uncorrected, 17 dB in front of a floor 7.8 dB below would read 16.4 dB. */
    @Test
    void whatASubtractedBackgroundHidIsSeen() {
        Judgement judgement = Bench.judge(atLeast(60, 14, "mean"), plug(60, 20, 17));
        assertThat(judgement.value().orElseThrow()).isCloseTo(17, within(1e-6));
    }
}
