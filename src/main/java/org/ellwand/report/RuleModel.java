package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Contribution;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.RuleText;
import org.ellwand.claim.Rule;
import org.ellwand.words.Sentences;

/** A rule and what it came to: the other fair interpretations, the cells, and what the uncertainty is made of. */
final class RuleModel {
    private static final double CANCELS = 1e-9;

    private RuleModel() {}

    /** One of the other fair interpretations. */
    static Map<String, Object> otherwise(Judgement judgement, Rule plain, double confidence, Sentences sentences) {
        Shown shown = Shown.of(judgement.rule(), plain);
        return Fields.of("name", judgement.rule().name())
                .and("rule", RuleText.subject(judgement.rule(), sentences))
                .and("limit", shown.limitModel())
                .and("changes", Phrases.pairs(judgement.rule().assumed()))
                .and("verdict", judgement.verdict().word())
                .and("probability", probability(judgement, confidence))
                .and("measured", MeasuredModel.of(judgement, plain))
                .and("reasons", RemarkModel.of(judgement.reasons(), sentences, shown))
                .and("notes", RemarkModel.of(judgement.remarks(), sentences, shown))
                .map();
    }

    static List<Object> pairs(Map<String, String> pairs) {
        return pairs.entrySet().stream()
                .map(pair -> (Object) Fields.of("key", pair.getKey())
                        .and("text", pair.getValue())
                        .map())
                .toList();
    }

    static List<Object> cells(Judgement judgement, double confidence) {
        CellNames names = new CellNames(judgement.cells());
        Shown shown = Shown.of(judgement.rule(), judgement.rule());
        return Worst.of(judgement).cells().stream()
                .map(cell -> cell(cell, names, judgement, shown, confidence))
                .toList();
    }

    private static Object cell(CellResult cell, CellNames names, Judgement judgement, Shown shown, double confidence) {
        boolean calculated = Wording.isCalculated(judgement.rule());
        return Fields.of("name", names.shortName(cell))
                .and("conditions", Phrases.conditions(cell.conditions()))
                .and("insertions", cell.insertions())
                .and("value", shown.value(cell.value()))
                .and("expandedUncertainty", calculated ? "" : shown.uncertainty(cell.standardUncertainty(), 2))
                .and("probability", probability(cell.probability(), calculated, confidence))
                .map();
    }

    /** By cause: the instances of one cause are independent and add as squares (JCGM 100, 5.1.2). */
    static List<Object> contributions(Judgement judgement) {
        Map<String, List<Contribution>> byCause = Deciding.cell(judgement).stream()
                .flatMap(cell -> cell.contributions().stream())
                .collect(Collectors.groupingBy(Contribution::cause));
        return byCause.entrySet().stream()
                .sorted((a, b) -> order(a, b))
                .map(cause ->
                        contribution(cause.getKey(), cause.getValue(), Shown.of(judgement.rule(), judgement.rule())))
                .toList();
    }

    private static int order(Map.Entry<String, List<Contribution>> a, Map.Entry<String, List<Contribution>> b) {
        int bySize = Double.compare(effect(b.getValue()), effect(a.getValue()));
        return bySize != 0 ? bySize : a.getKey().compareTo(b.getKey());
    }

    private static Object contribution(String cause, List<Contribution> instances, Shown shown) {
        return Fields.of("cause", cause)
                .and("instances", instances.size())
                .and("effect", effect(effect(instances), shown))
                .map();
    }

    /** Empty where the cause cancels; what is left of it then is the rounding of the sums. */
    private static String effect(double size, Shown shown) {
        return size < CANCELS ? "" : shown.uncertainty(OptionalDouble.of(size), 1);
    }

    private static double effect(List<Contribution> instances) {
        return Math.sqrt(instances.stream()
                .mapToDouble(one -> one.effect() * one.effect())
                .sum());
    }

    static String probability(Judgement judgement, double confidence) {
        return probability(judgement.probability(), Wording.isCalculated(judgement.rule()), confidence);
    }

    /** Of arithmetic on given numbers it is 1 or 0, and printed so. */
    private static String probability(OptionalDouble probability, boolean calculated, double confidence) {
        if (probability.isEmpty()) {
            return "";
        }
        return calculated
                ? Numbers.plain(probability.getAsDouble())
                : Numbers.probability(probability.getAsDouble(), confidence);
    }
}
