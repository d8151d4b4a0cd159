package org.ellwand.report;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.claim.Rule;

/**
 * How far apart two products lie on a topic. Their uncertainties are added as squares, as if nothing were shared: what is
 * shared makes the difference surer than said here.
 */
final class Apart {
    private Apart() {}

    /** Empty texts where the rules differ in more than their limits, or an uncertainty is not known. */
    static Map<String, Object> of(List<ClaimAudit> claims) {
        List<Judgement> judged = claims.stream()
                .flatMap(claim -> claim.plain().stream())
                .filter(Apart::isKnown)
                .toList();
        boolean alike = judged.size() == claims.size()
                && judged.stream().map(Apart::kind).distinct().count() == 1;
        Comparator<Judgement> byValue = Comparator.comparingDouble(Deciding::value);
        Optional<Judgement> least = judged.stream().min(byValue);
        Optional<Judgement> most = judged.stream().max(byValue);
        return alike && least.isPresent() && most.isPresent() ? between(least.get(), most.get()) : model("", "");
    }

    private static Map<String, Object> between(Judgement least, Judgement most) {
        double size = Deciding.value(most) - Deciding.value(least);
        double expanded = 2
                * Math.hypot(
                        least.standardUncertainty().orElse(0),
                        most.standardUncertainty().orElse(0));
        Shown shown = Shown.of(most.rule(), most.rule());
        return model(shown.difference(size, Deciding.value(most)), size > expanded ? "more" : "less");
    }

    private static boolean isKnown(Judgement judgement) {
        return judgement.value().isPresent()
                && judgement.standardUncertainty().isPresent()
                && MeasuredModel.isOwn(judgement)
                && !Wording.isCalculated(judgement.rule());
    }

    /** What must be the same for two values to be compared: all of the rule but its limit and the product's own names. */
    private static List<Object> kind(Judgement judgement) {
        Rule rule = judgement.rule();
        return List.of(
                rule.quantity(),
                rule.statistic(),
                rule.bands(),
                rule.weighting(),
                rule.stimulus(),
                rule.level(),
                rule.referredToField(),
                rule.between(),
                rule.ratio(),
                rule.ears(),
                rule.of(),
                rule.reference(),
                rule.method(),
                rule.limit().unit());
    }

    private static Map<String, Object> model(String size, String against) {
        return Fields.of("size", size).and("againstUncertainty", against).map();
    }
}
