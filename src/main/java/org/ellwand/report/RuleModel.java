package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ellwand.amount.Unit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Contribution;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Reason;

/** A rule and what it came to: the other fair interpretations, the cells, and what the uncertainty is made of. */
final class RuleModel {
    private static final double CANCELS = 1e-9;

    private RuleModel() {}

    /** One of the other fair interpretations. */
    static Map<String, Object> otherwise(Judgement judgement, double confidence) {
        return Fields.of("name", judgement.rule().name())
                .and("rule", judgement.text())
                .and("changes", Phrases.pairs(judgement.rule().assumed()))
                .and("verdict", judgement.verdict().word())
                .and("probability", probability(judgement.probability(), confidence))
                .and("measured", MeasuredModel.of(judgement))
                .and("reason", judgement.reason().orElse(""))
                .and("notes", judgement.notes())
                .map();
    }

    static List<Object> pairs(Map<String, String> pairs) {
        return pairs.entrySet().stream()
                .map(pair -> (Object) Fields.of("key", pair.getKey())
                        .and("text", pair.getValue())
                        .map())
                .toList();
    }

    static List<Object> reasons(List<Reason> reasons) {
        return reasons.stream()
                .map(reason -> (Object) Fields.of("key", reason.key())
                        .and("text", reason.text())
                        .map())
                .toList();
    }

    static List<Object> cells(Judgement judgement, double confidence) {
        CellNames names = new CellNames(judgement.cells());
        return judgement.cells().stream()
                .map(cell -> cell(cell, names, judgement, confidence))
                .toList();
    }

    private static Object cell(CellResult cell, CellNames names, Judgement judgement, double confidence) {
        Unit unit = judgement.rule().limit().unit();
        OptionalDouble u = cell.standardUncertainty();
        return Fields.of("name", Wording.cell(judgement.rule(), names, cell))
                .and("conditions", Phrases.conditions(cell.conditions()))
                .and("insertions", cell.insertions())
                .and(
                        "value",
                        Numbers.withUnit(
                                Numbers.value(
                                        cell.value(), unit, judgement.rule().limit()),
                                unit))
                .and(
                        "expandedUncertainty",
                        u.isPresent() && !Wording.isCalculated(judgement.rule())
                                ? Numbers.withUnit(Numbers.expanded(u.getAsDouble()), unit)
                                : "")
                .and("probability", probability(cell.probability(), confidence))
                .map();
    }

    /** By cause: the instances of one cause are independent and add as squares (JCGM 100, 5.1.2). */
    static List<Object> contributions(Judgement judgement) {
        Map<String, List<Contribution>> byCause = Deciding.cell(judgement).stream()
                .flatMap(cell -> cell.contributions().stream())
                .collect(Collectors.groupingBy(Contribution::cause));
        return byCause.entrySet().stream()
                .sorted((a, b) -> order(a, b))
                .map(cause -> contribution(
                        cause.getKey(),
                        cause.getValue(),
                        judgement.rule().limit().unit()))
                .toList();
    }

    private static int order(Map.Entry<String, List<Contribution>> a, Map.Entry<String, List<Contribution>> b) {
        int bySize = Double.compare(effect(b.getValue()), effect(a.getValue()));
        return bySize != 0 ? bySize : a.getKey().compareTo(b.getKey());
    }

    private static Object contribution(String cause, List<Contribution> instances, Unit unit) {
        return Fields.of("cause", cause)
                .and("instances", instances.size())
                .and("effect", effect(effect(instances), unit))
                .map();
    }

    /** What is left of a cause that cancels is the rounding of the sums. */
    private static String effect(double size, Unit unit) {
        return size < CANCELS ? "cancels" : Numbers.withUnit(Numbers.significant(size, 2), unit);
    }

    private static double effect(List<Contribution> instances) {
        return Math.sqrt(instances.stream()
                .mapToDouble(one -> one.effect() * one.effect())
                .sum());
    }

    static String probability(OptionalDouble probability, double confidence) {
        return probability.isPresent() ? Numbers.probability(probability.getAsDouble(), confidence) : "";
    }
}
