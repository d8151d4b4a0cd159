package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Reference;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.pairing.Joined;

/**
 * Lower and upper limiting frequency: seen from the reference outwards, the frequency at which the response has first
 * fallen by a stated drop; straight line between band centres on a logarithmic frequency axis. Not fallen by the last
 * band: beyond it. (The term and the idea of IEC 60268 for loudspeakers and headphones, ANSI S3.22 uses 20 dB below the
 * high-frequency average; both from memory.)
 */
final class LimitingFrequency implements SpectralQuantity {
    private final boolean lower;

    private LimitingFrequency(boolean lower) {
        this.lower = lower;
    }

    static LimitingFrequency lower() {
        return new LimitingFrequency(true);
    }

    static LimitingFrequency upper() {
        return new LimitingFrequency(false);
    }

    @Override
    public QuantityForm form() {
        return new QuantityForm(
                (lower ? "lower" : "upper") + " limiting frequency",
                Dimension.FREQUENCY,
                Map.of(
                        "bands",
                        "a range is looked for among stated bands",
                        "drop",
                        "a range ends where the level has fallen by a stated amount",
                        "reference",
                        "a response is relative to something"),
                OutputSums.usable(),
                "Hz",
                (lower ? "lowest" : "highest")
                        + " frequency at which the response has not yet fallen by drop, seen from the reference");
    }

    @Override
    public Rule completed(Rule rule) {
        return rule.with(Statistic.MEAN, rule.weighting());
    }

    @Override
    public List<CurvePart> parts(Rule rule) {
        return List.of(new CurvePart(1, 1, 0, 0, 0, Optional.empty(), rule.reference()));
    }

    @Override
    public Formula formula(Joined joined, Rule rule) {
        Unit unit = rule.limit().unit();
        Stage stage = new Stage(
                lower, startHz(rule.reference().orElseThrow()), Settings.decibels(rule, "drop"), unit.factor());
        return new StagedFormula(List.of(formula(joined.first(), rule)), stage);
    }

    /** Where the search begins: at the reference, or in the middle of its range. */
    private static double startHz(Reference reference) {
        if (reference instanceof Reference.MeanOf range) {
            return Math.sqrt(range.hz().lower() * range.hz().upper());
        }
        return ((Reference.At) reference).frequencyHz();
    }

    private record Stage(boolean lower, double startHz, double dropDb, double unitHz) implements StagedFormula.Stage {
        @Override
        public Formula.Task inner(Formula.Task task) {
            return task.with(Outcome.CURVE);
        }

        @Override
        public Outer outer(Formula.Task task) {
            int[] path = path(task.bands());
            double[] place = new double[path.length];
            for (int i = 0; i < path.length; i++) {
                place[i] = Math.log10(task.bands().get(path[i]).exactHz());
            }
            return (response, out) -> {
                double[] along = new double[path.length];
                for (int i = 0; i < path.length; i++) {
                    along[i] = response[path[i]];
                }
                double at = Crossing.first(place, along, -dropDb, true);
                out[0] = Double.isNaN(at)
                        ? (lower ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY)
                        : Math.pow(10, at) / unitHz;
            };
        }

        /** Positions of the bands from the start outwards. */
        private int[] path(List<Band> bands) {
            int start = 0;
            for (int b = 0; b < bands.size(); b++) {
                if (distance(bands.get(b)) < distance(bands.get(start))) {
                    start = b;
                }
            }
            int[] path = new int[lower ? start + 1 : bands.size() - start];
            for (int i = 0; i < path.length; i++) {
                path[i] = lower ? start - i : start + i;
            }
            return path;
        }

        private double distance(Band band) {
            return Math.abs(Math.log(band.exactHz() / startHz));
        }

        @Override
        public Reach reach(Formula.Task task) {
            List<Band> bands = task.bands();
            double lowest = bands.get(0).exactHz() / unitHz;
            double highest = bands.get(bands.size() - 1).exactHz() / unitHz;
            return new Reach(lowest, highest);
        }
    }
}
