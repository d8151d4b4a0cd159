package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.ellwand.audit.Judgement;
import org.ellwand.claim.Choice;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;

/** Under which conditions a claim was tested, and how much was read for it. */
final class ConditionText {
    private ConditionText() {}

    /** What the cells have in common and what tells them apart; of an untested rule what it asks for. */
    static List<Object> of(Judgement judgement, String product, List<Session> sessions) {
        CellNames names = new CellNames(judgement.cells());
        List<Object> parts = new ArrayList<>();
        names.common().values().forEach((name, value) -> {
            if (!name.equals("device") || !value.equals(product)) {
                parts.add(condition(name, List.of(value), sessions));
            }
        });
        names.telling().forEach((name, values) -> parts.add(condition(name, values, sessions)));
        return parts.isEmpty() ? asked(judgement.rule()) : parts;
    }

    private static Object condition(String name, List<String> values, List<Session> sessions) {
        List<Object> named = values.stream()
                .map(value -> (Object) Fields.of("name", value)
                        .and("sound", sound(name, value, sessions))
                        .map())
                .toList();
        return Fields.of("name", name).and("values", named).map();
    }

    /** What a stimulus is, beside its name. */
    private static String sound(String name, String value, List<Session> sessions) {
        return sessions.stream()
                .filter(session -> name.equals("stimulus"))
                .flatMap(session -> Optional.ofNullable(session.stimuli().get(value)).stream())
                .findFirst()
                .map(Phrases::stimulus)
                .orElse("");
    }

    private static List<Object> asked(Rule rule) {
        return rule.where().entrySet().stream()
                .filter(condition -> condition.getValue() instanceof Choice.OneOf)
                .map(condition ->
                        condition(condition.getKey(), ((Choice.OneOf) condition.getValue()).names(), List.of()))
                .toList();
    }

    /** Counts the readings that entered the cells. */
    static Counted counted(Judgement judgement, String product, List<Session> sessions) {
        Predicate<Conditions> ofProduct =
                reading -> reading.get("device").map(product::equals).orElse(true);
        CellLookup cells = new CellLookup(judgement.cells());
        return Counted.of(sessions, ofProduct.and(reading -> entered(judgement, cells, reading, sessions)));
    }

    private static boolean entered(Judgement judgement, CellLookup cells, Conditions reading, List<Session> sessions) {
        Rule rule = judgement.rule();
        for (Map.Entry<String, Choice> condition : rule.where().entrySet()) {
            Optional<String> value = reading.get(condition.getKey());
            if (value.isPresent() && !condition.getValue().accepts(value.get())) {
                return false;
            }
        }
        boolean compared = rule.between()
                .flatMap(between -> reading.get(between.condition())
                        .map(value -> value.equals(between.first()) || value.equals(between.second())))
                .orElse(true);
        return compared && cells.like(reading).anyMatch(cell -> agrees(cell, reading, sessions));
    }

    private static boolean agrees(Conditions cell, Conditions reading, List<Session> sessions) {
        for (String name : cell.names()) {
            Optional<String> value = reading.get(name);
            boolean agrees = value.isEmpty()
                    || cell.has(name, value.get())
                    || isOfKind(name, cell.get(name).orElse(""), value.get(), sessions);
            if (!agrees) {
                return false;
            }
        }
        return true;
    }

    /** A cell of a series over level names the kind of its stimuli, and each reading its own. */
    private static boolean isOfKind(String name, String kind, String stimulus, List<Session> sessions) {
        return name.equals("stimulus")
                && sessions.stream()
                        .flatMap(
                                session -> Optional.ofNullable(session.stimuli().get(stimulus)).stream())
                        .anyMatch(sound -> sound.kind().equals(kind));
    }
}
