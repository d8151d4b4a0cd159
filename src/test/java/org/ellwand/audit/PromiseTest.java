package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ellwand.acoustics.Resolution;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The promise of the verdicts, simulated: of claims whose truth lies exactly on the limit at most 5 % pass and at most 5 %
 * fail, under every statistic, with declared causes and with repeats only; and the verdicts are not timid. Every run is a
 * new invented sitting: true curves, calibration, insertions and readings drawn, then judged as any other.
 */
@Tag("slow")
@Execution(ExecutionMode.CONCURRENT)
class PromiseTest {
    private static final int RUNS = 200;
    private static final double ERROR = 0.05;
    /** Three standard errors of a share of 5 % in so many runs. */
    private static final double SAMPLING = 3 * Math.sqrt(ERROR * (1 - ERROR) / RUNS);

    private static final int BANDS = 19;
    private static final double SESSION_DB = 0.5;
    private static final double INSERTION_DB = 0.8;
    private static final double READING_DB = 0.6;
    private static final String WHERE =
            "quantity: attenuation, setting: flood, level: 94 dB SPL, bands: 125 Hz to 8 kHz, ";

    /** What the simulated auditor knows. */
    private enum Known {
        DECLARED,
        REPEATS
    }

    /**
     * One kind of claim.
     *
     * @param rule statistic and limit
     * @param shape true attenuation by band, with the truth on the limit
     * @param leastPasses share of passes below which the verdict would be timid; 0 where nothing is asked
     */
    private record Scenario(String name, String rule, double[] shape, Known known, int insertions, double leastPasses) {
        @Override
        public String toString() {
            return name + ", " + known + ", " + insertions + " insertions";
        }
    }

    static List<Scenario> scenarios() {
        List<Scenario> all = new ArrayList<>();
        for (Known known : Known.values()) {
            for (int insertions : known == Known.DECLARED ? new int[] {1, 3} : new int[] {3, 6}) {
                add(
                        all,
                        "mean on the limit",
                        "statistic: mean, limit: at least 20 dB",
                        flat(20),
                        known,
                        insertions,
                        0.03);
                add(
                        all,
                        "mean on the upper end",
                        "statistic: mean, limit: 17 dB ± 3 dB",
                        flat(20),
                        known,
                        insertions,
                        0.03);
                add(
                        all,
                        "every band, all on the limit",
                        "statistic: every band, limit: at least 20 dB",
                        flat(20),
                        known,
                        insertions,
                        0);
                add(
                        all,
                        "every band, one on the limit",
                        "statistic: every band, limit: at least 20 dB",
                        one(20, 26),
                        known,
                        insertions,
                        0.03);
                add(
                        all,
                        "every band, two-sided",
                        "statistic: every band, limit: 17 dB ± 3 dB",
                        flat(20),
                        known,
                        insertions,
                        0);
                add(
                        all,
                        "lowest, all on the limit",
                        "statistic: lowest, limit: at least 20 dB",
                        flat(20),
                        known,
                        insertions,
                        0);
                add(all, "lowest at most", "statistic: lowest, limit: at most 20 dB", flat(20), known, insertions, 0);
                add(
                        all,
                        "lowest at most, one",
                        "statistic: lowest, limit: at most 20 dB",
                        one(20, 26),
                        known,
                        insertions,
                        0);
                add(
                        all,
                        "highest at least",
                        "statistic: highest, limit: at least 20 dB",
                        flat(20),
                        known,
                        insertions,
                        0);
                add(
                        all,
                        "highest at least, one",
                        "statistic: highest, limit: at least 20 dB",
                        one(20, 14),
                        known,
                        insertions,
                        0);
                add(
                        all,
                        "highest at most, one",
                        "statistic: highest, limit: at most 20 dB",
                        one(20, 14),
                        known,
                        insertions,
                        0.03);
                add(
                        all,
                        "spread at most, flat",
                        "statistic: spread, limit: at most 12 dB",
                        two(14, 26, 20),
                        known,
                        insertions,
                        0.02);
                add(
                        all,
                        "spread at most, halves",
                        "statistic: spread, limit: at most 4 dB",
                        halves(20, 24),
                        known,
                        insertions,
                        0);
                add(
                        all,
                        "spread at least",
                        "statistic: spread, limit: at least 4 dB",
                        halves(20, 24),
                        known,
                        insertions,
                        0);
                add(all, "median", "statistic: median, limit: at least 20 dB", flat(20), known, insertions, 0);
                add(all, "median, halves", "statistic: median, limit: at least 20 dB", steps(), known, insertions, 0);
                add(all, "slope", "statistic: slope, limit: at most 0 dB/octave", flat(20), known, insertions, 0.03);
                add(
                        all,
                        "overall",
                        "statistic: overall, weighting: A, limit: at least 20 dB",
                        flat(20),
                        known,
                        insertions,
                        0.03);
            }
        }
        return all;
    }

    /** Repeats alone know their spread from few numbers, for product and open ear apart: sums of two t are wary. */
    private static void add(
            List<Scenario> all, String name, String rule, double[] shape, Known known, int insertions, double least) {
        double wary = known == Known.REPEATS ? least / 3 : least;
        all.add(new Scenario(name, rule, shape, known, insertions, wary));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void atMostFivePercentPassAndAtMostFivePercentFail(Scenario scenario) throws Exception {
        Product product = Bench.product(WHERE + scenario.rule());
        int passes = 0;
        int fails = 0;
        for (int run = 0; run < RUNS; run++) {
            Audit audit = new Auditor(new AuditOptions(5000))
                    .audit(List.of(product), List.of(session(scenario, run)), List.of());
            Verdict verdict = audit.products().get(0).claims().get(0).verdict();
            passes += verdict == Verdict.PASS ? 1 : 0;
            fails += verdict == Verdict.FAIL ? 1 : 0;
        }
        assertThat((double) passes / RUNS).as("passes").isBetween(scenario.leastPasses(), ERROR + SAMPLING);
        assertThat((double) fails / RUNS).as("fails").isLessThanOrEqualTo(ERROR + SAMPLING);
    }

    private static Session session(Scenario scenario, int run) {
        NormalStream draw = new NormalStream(Seeds.of("promise", scenario.toString(), Integer.toString(run)));
        Bench bench = new Bench("crew-01", Resolution.THIRD_OCTAVE);
        if (scenario.known() == Known.DECLARED) {
            bench.cause("calibration", SESSION_DB, SharedBy.SESSION, false)
                    .cause("insertion", INSERTION_DB, SharedBy.INSERTION, false)
                    .cause("reading", READING_DB, SharedBy.READING, true);
        }
        double calibration = SESSION_DB * draw.next();
        int takes = scenario.known() == Known.DECLARED ? 1 : scenario.insertions();
        for (int t = 1; t <= takes; t++) {
            bench.reading("device=open ear, stimulus=n94, take=" + t, 125, levels(flat(0), calibration, 0, draw));
        }
        for (int i = 1; i <= scenario.insertions(); i++) {
            double insertion = INSERTION_DB * draw.next();
            bench.reading(
                    "device=Skerry, setting=flood, stimulus=n94, insertion=" + i,
                    125,
                    levels(scenario.shape(), calibration, insertion, draw));
        }
        return bench.session();
    }

    private static double[] levels(double[] attenuation, double calibration, double insertion, NormalStream draw) {
        double[] levels = new double[BANDS];
        for (int b = 0; b < BANDS; b++) {
            levels[b] = 81 - attenuation[b] + calibration + insertion + READING_DB * draw.next();
        }
        return levels;
    }

    private static double[] flat(double value) {
        double[] curve = new double[BANDS];
        Arrays.fill(curve, value);
        return curve;
    }

    private static double[] one(double value, double others) {
        double[] curve = flat(others);
        curve[7] = value;
        return curve;
    }

    private static double[] two(double low, double high, double others) {
        double[] curve = flat(others);
        curve[3] = low;
        curve[12] = high;
        return curve;
    }

    private static double[] halves(double low, double high) {
        double[] curve = flat(low);
        Arrays.fill(curve, 10, BANDS, high);
        return curve;
    }

    /** The tenth of nineteen bands on the limit, nine far above and nine far below. */
    private static double[] steps() {
        double[] curve = flat(26);
        Arrays.fill(curve, 0, 9, 14);
        curve[9] = 20;
        return curve;
    }
}
