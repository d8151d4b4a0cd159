package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.acoustics.Exposure;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.words.Remark;

/**
 * Noise dose and permissible duration: what an exposure rule makes of the A-weighted output level. Formulas and their
 * sources: {@link Exposure}. A number about the sound that was measured in these ears; no statement about a workplace.
 */
final class NoiseExposure implements SpectralQuantity {
    private final boolean dose;

    private NoiseExposure(boolean dose) {
        this.dose = dose;
    }

    static NoiseExposure dose() {
        return new NoiseExposure(true);
    }

    static NoiseExposure duration() {
        return new NoiseExposure(false);
    }

    @Override
    public QuantityForm form() {
        Map<String, String> needed = new TreeMap<>();
        needed.put("bands", "a level is summed over stated bands");
        needed.put("level", "what comes out depends on the level that goes in");
        needed.put("exposure", "laws and recommendations differ in what they allow");
        needed.put("referred to", "an eardrum reads 5 to 10 dB(A) above the field, where the rules hold");
        if (dose) {
            needed.put("duration", "a dose is gathered over a time");
        }
        return new QuantityForm(
                dose ? "noise dose" : "permissible duration",
                dose ? Dimension.SHARE : Dimension.TIME,
                needed,
                OutputSums.usable(),
                dose ? "%" : "h",
                dose
                        ? "duration over the duration that the exposure rule allows at the A-weighted output level, times 100"
                        : "duration that the exposure rule allows at the A-weighted output level");
    }

    @Override
    public Rule completed(Rule rule) {
        return rule.with(Statistic.OVERALL, Weighting.A);
    }

    @Override
    public List<CurvePart> parts(Rule rule) {
        return OutputSums.parts(rule);
    }

    @Override
    public Formula formula(Joined joined, Rule rule) {
        return new StagedFormula(List.of(formula(joined.first(), rule)), new Stage(ofLevel(rule)));
    }

    private DoubleUnaryOperator ofLevel(Rule rule) {
        Exposure exposure = Exposure.named(Settings.text(rule, "exposure")).orElseThrow();
        if (dose) {
            double seconds = Settings.amount(rule, "duration", Unit.SECOND);
            return levelDbA -> exposure.dosePercent(levelDbA, seconds);
        }
        double unitS = rule.limit().unit().factor();
        return levelDbA -> exposure.permissibleSeconds(levelDbA) / unitS;
    }

    @Override
    public List<Remark> notes(List<Cell> cells, Rule rule) {
        return List.of(Remark.of(rule.referredToField() ? "exposure-arithmetic" : "exposure-at-eardrum")
                .with("rule", Settings.text(rule, "exposure")));
    }

    private record Stage(DoubleUnaryOperator ofLevel) implements StagedFormula.Stage {
        @Override
        public Formula.Task inner(Formula.Task task) {
            return task;
        }

        @Override
        public Outer outer(Formula.Task task) {
            return (level, out) -> out[0] = ofLevel.applyAsDouble(level[0]);
        }

        @Override
        public Reach reach(Formula.Task task) {
            return Reach.UNLIMITED;
        }
    }
}
