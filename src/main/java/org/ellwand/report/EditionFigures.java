package org.ellwand.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.ProductAudit;
import org.ellwand.claim.Rule;

/** Which claims of a product say the same thing at different times. */
final class EditionFigures {
    private EditionFigures() {}

    /** The shapes of one figure for each topic of which two editions or more were judged by the same number. */
    static List<Map<String, Object>> of(ProductAudit product) {
        Map<List<Object>, List<EditionFigure.Step>> topics = new LinkedHashMap<>();
        int number = 0;
        for (ClaimAudit claim : product.claims()) {
            int place = ++number;
            claim.plain()
                    .filter(plain -> plain.value().isPresent())
                    .ifPresent(plain -> topics.computeIfAbsent(kind(claim, plain.rule()), kind -> new ArrayList<>())
                            .add(new EditionFigure.Step(place, claim, plain)));
        }
        return topics.values().stream()
                .filter(EditionFigures::isSeveralEditions)
                .map(steps -> new EditionFigure(steps).model())
                .toList();
    }

    private static boolean isSeveralEditions(List<EditionFigure.Step> steps) {
        return steps.stream()
                        .map(step -> step.claim().claim().edition().id())
                        .distinct()
                        .count()
                > 1;
    }

    private static List<Object> kind(ClaimAudit claim, Rule rule) {
        Judgement plain = claim.plain().orElseThrow();
        return List.of(
                claim.claim().topic(),
                rule.quantity(),
                rule.statistic(),
                rule.of(),
                rule.between(),
                rule.ratio(),
                Shown.of(plain.rule(), plain.rule()).unit());
    }
}
