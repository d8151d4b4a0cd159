package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ellwand.audit.Judgement;
import org.ellwand.claim.Choice;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;

/** Under which conditions a claim was tested, and on how many ears. */
final class ConditionText {
    private ConditionText() {}

    /** {@code setting flood, stimulus pink-94 (pink noise, 94 dB SPL)}; of an untested rule what it asks for. */
    static String of(Judgement judgement, String product, List<Session> sessions) {
        CellNames names = new CellNames(judgement.cells());
        List<String> parts = new ArrayList<>();
        Map<String, String> common = names.common().values();
        common.forEach((name, value) -> {
            if (!name.equals("device") || !value.equals(product)) {
                parts.add(name + " " + named(name, value, sessions));
            }
        });
        names.telling()
                .forEach((name, values) -> parts.add(name + " "
                        + values.stream()
                                .map(value -> named(name, value, sessions))
                                .collect(Collectors.joining(" and "))));
        return parts.isEmpty() ? asked(judgement.rule()) : String.join(", ", parts);
    }

    private static String named(String name, String value, List<Session> sessions) {
        if (!name.equals("stimulus")) {
            return value;
        }
        return sessions.stream()
                .flatMap(session -> Optional.ofNullable(session.stimuli().get(value)).stream())
                .findFirst()
                .map(stimulus -> value + " (" + Phrases.stimulus(stimulus) + ")")
                .orElse(value);
    }

    private static String asked(Rule rule) {
        return rule.where().entrySet().stream()
                .filter(condition -> condition.getValue() instanceof Choice.OneOf)
                .map(condition ->
                        condition.getKey() + " " + String.join(" or ", ((Choice.OneOf) condition.getValue()).names()))
                .collect(Collectors.joining(", "));
    }

    /** Counts the readings that entered the cells. */
    static Counted counted(Judgement judgement, String product, List<Session> sessions) {
        Predicate<Conditions> ofProduct =
                reading -> reading.get("device").map(product::equals).orElse(true);
        return Counted.of(sessions, ofProduct.and(reading -> entered(judgement, reading)));
    }

    private static boolean entered(Judgement judgement, Conditions reading) {
        Rule rule = judgement.rule();
        boolean chosen = rule.where().entrySet().stream()
                .allMatch(condition -> reading.get(condition.getKey())
                        .map(condition.getValue()::accepts)
                        .orElse(true));
        boolean compared = rule.between()
                .flatMap(between -> reading.get(between.condition())
                        .map(value -> value.equals(between.first()) || value.equals(between.second())))
                .orElse(true);
        return chosen && compared && judgement.cells().stream().anyMatch(cell -> agrees(cell.conditions(), reading));
    }

    private static boolean agrees(Conditions cell, Conditions reading) {
        return cell.values().entrySet().stream()
                .allMatch(condition -> reading.get(condition.getKey())
                        .map(condition.getValue()::equals)
                        .orElse(true));
    }
}
