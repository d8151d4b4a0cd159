package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ellwand.acoustics.Resolution;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;

/**
 * One kind of claim whose truth lies exactly on its limit, and one way of measuring it. Every run is a new invented sitting:
 * calibration, insertions and readings drawn around the true curves, then judged as any other.
 *
 * @param rule statistic and limit
 * @param shape true attenuation by band, or the true difference of two settings; on the limit
 * @param leastPasses share of passes below which the verdict would be timid; 0 where nothing is asked
 */
record PromiseScenario(String name, String rule, double[] shape, Design design, double leastPasses) {
    private static final int BANDS = 19;
    private static final double OPEN_DB = 81;
    private static final double EBB_DB = 5;
    private static final String WHERE = "quantity: attenuation, level: 94 dB SPL, bands: 125 Hz to 8 kHz, ";

    /** What the simulated auditor knows: the sizes of the causes, or only what the repeats show. */
    enum Known {
        DECLARED,
        REPEATS
    }

    /** What is held against what: a plug against the open ear, or one of its settings against the other. */
    enum Pairing {
        OPEN_EAR("setting: flood, "),
        SETTINGS("between: {setting: [flood, ebb]}, ");

        private final String keys;

        Pairing(String keys) {
            this.keys = keys;
        }
    }

    /** Standard deviations of what goes wrong. */
    record Causes(double sessionDb, double insertionDb, double readingDb) {
        static final Causes ALL = new Causes(0.5, 0.8, 0.6);
        static final Causes INSERTION = new Causes(0, 0.8, 0.1);
        static final Causes READING = new Causes(0, 0, 0.6);
        static final Causes LARGE = new Causes(1, 2, 1.5);

        @Override
        public String toString() {
            return sessionDb + ", " + insertionDb + ", " + readingDb;
        }
    }

    /** How it is measured. */
    record Design(Known known, int insertions, Causes causes, Pairing pairing) {}

    @Override
    public String toString() {
        return name + ", " + design.known() + ", " + design.insertions() + " insertions"
                + (design.causes().equals(Causes.ALL) ? "" : ", " + design.causes())
                + (design.pairing() == Pairing.OPEN_EAR ? "" : ", " + design.pairing());
    }

    /** Every kind of claim, measured in one way. */
    static List<PromiseScenario> of(Design design) {
        List<PromiseScenario> all = new ArrayList<>();
        all.add(of("mean on the limit", "statistic: mean, limit: at least 20 dB", flat(20), design, 0.03));
        all.add(of("mean on the upper end", "statistic: mean, limit: 17 dB ± 3 dB", flat(20), design, 0.03));
        all.add(of(
                "every band, all on the limit", "statistic: every band, limit: at least 20 dB", flat(20), design, 0));
        all.add(of(
                "every band, one on the limit",
                "statistic: every band, limit: at least 20 dB",
                one(20, 26),
                design,
                0.03));
        all.add(of("every band, two-sided", "statistic: every band, limit: 17 dB ± 3 dB", flat(20), design, 0));
        all.add(of("lowest, all on the limit", "statistic: lowest, limit: at least 20 dB", flat(20), design, 0));
        all.add(of("lowest at most", "statistic: lowest, limit: at most 20 dB", flat(20), design, 0));
        all.add(of("lowest at most, one", "statistic: lowest, limit: at most 20 dB", one(20, 26), design, 0));
        all.add(of("highest at least", "statistic: highest, limit: at least 20 dB", flat(20), design, 0));
        all.add(of("highest at least, one", "statistic: highest, limit: at least 20 dB", one(20, 14), design, 0));
        all.add(of("highest at most, one", "statistic: highest, limit: at most 20 dB", one(20, 14), design, 0.03));
        all.add(of("spread at most, flat", "statistic: spread, limit: at most 12 dB", two(14, 26, 20), design, 0.02));
        all.add(of("spread at most, halves", "statistic: spread, limit: at most 4 dB", halves(20, 24), design, 0));
        all.add(of("spread at least", "statistic: spread, limit: at least 4 dB", halves(20, 24), design, 0));
        all.add(of("median", "statistic: median, limit: at least 20 dB", flat(20), design, 0));
        all.add(of("median, halves", "statistic: median, limit: at least 20 dB", steps(), design, 0));
        all.add(of("slope", "statistic: slope, limit: at most 0 dB/octave", flat(20), design, 0.03));
        all.add(of("overall", "statistic: overall, weighting: A, limit: at least 20 dB", flat(20), design, 0.03));
        return all;
    }

    /** Repeats alone know their spread from few numbers, for product and open ear apart: sums of two t are wary. */
    private static PromiseScenario of(String name, String rule, double[] shape, Design design, double least) {
        return new PromiseScenario(name, rule, shape, design, design.known() == Known.REPEATS ? least / 3 : least);
    }

    Product product() {
        return Bench.product(WHERE + design.pairing().keys + rule);
    }

    Verdict verdict(Product product, int run, int trials) {
        return Bench.audit(product, new AuditOptions(trials), session(run))
                .products()
                .get(0)
                .claims()
                .get(0)
                .verdict();
    }

    private Session session(int run) {
        NormalStream draw = new NormalStream(Seeds.of("promise", toString(), Integer.toString(run)));
        Bench bench = new Bench("crew-01", Resolution.THIRD_OCTAVE);
        Causes causes = design.causes();
        if (design.known() == Known.DECLARED) {
            declare(bench, causes);
        }
        double calibration = causes.sessionDb() * draw.next();
        int takes = design.known() == Known.DECLARED ? 1 : design.insertions();
        for (int t = 1; t <= takes; t++) {
            bench.reading("device=open ear, stimulus=n94, take=" + t, 125, levels(flat(0), calibration, draw));
        }
        for (var setting : settings().entrySet()) {
            for (int i = 1; i <= design.insertions(); i++) {
                double offset = calibration + causes.insertionDb() * draw.next();
                String conditions = "device=Skerry, setting=" + setting.getKey() + ", stimulus=n94, insertion="
                        + setting.getKey().charAt(0) + i;
                bench.reading(conditions, 125, levels(setting.getValue(), offset, draw));
            }
        }
        return bench.session();
    }

    private static void declare(Bench bench, Causes causes) {
        declare(bench, "calibration", causes.sessionDb(), SharedBy.SESSION, false);
        declare(bench, "insertion", causes.insertionDb(), SharedBy.INSERTION, false);
        declare(bench, "reading", causes.readingDb(), SharedBy.READING, true);
    }

    private static void declare(Bench bench, String cause, double sizeDb, SharedBy sharedBy, boolean independent) {
        if (sizeDb > 0) {
            bench.cause(cause, sizeDb, sharedBy, independent);
        }
    }

    /** True attenuation by setting, in a fixed order. */
    private Map<String, double[]> settings() {
        if (design.pairing() == Pairing.OPEN_EAR) {
            return Map.of("flood", shape);
        }
        Map<String, double[]> both = new TreeMap<>();
        both.put("ebb", flat(EBB_DB));
        both.put("flood", Arrays.stream(shape).map(db -> db + EBB_DB).toArray());
        return both;
    }

    private double[] levels(double[] attenuation, double offset, NormalStream draw) {
        double[] levels = new double[BANDS];
        for (int b = 0; b < BANDS; b++) {
            levels[b] = OPEN_DB - attenuation[b] + offset + design.causes().readingDb() * draw.next();
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
