package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.claim.Choice;
import org.ellwand.claim.Rule;
import org.ellwand.input.Nearest;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Figure;
import org.ellwand.measurement.HarmonicReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.measurement.Trace;
import org.ellwand.words.Remark;

/** Names in a rule that nothing measured bears: a slip of the pen must not pass for a reading that was never made. */
final class Misnamed {
    private final List<Conditions> measured;

    private Misnamed(List<Session> sessions) {
        measured = sessions.stream()
                .flatMap(s -> Stream.of(
                                s.readings().stream().map(Reading::conditions),
                                s.figures().stream().map(Figure::conditions),
                                s.traces().stream().map(Trace::conditions),
                                s.harmonics().stream().map(HarmonicReading::conditions))
                        .flatMap(Function.identity()))
                .toList();
    }

    /** One note for every such name, with the nearest name that was measured. */
    static List<Remark> notes(Rule rule, String product, List<Session> sessions) {
        Misnamed misnamed = new Misnamed(sessions);
        List<Remark> device = misnamed.unborne("device", "product", product);
        if (!device.isEmpty()) {
            return device;
        }
        List<Remark> notes = new ArrayList<>();
        rule.where().forEach((condition, choice) -> {
            if (choice instanceof Choice.OneOf some) {
                some.names().forEach(name -> notes.addAll(misnamed.unborne(condition, condition, name)));
            }
        });
        rule.stimulus().ifPresent(kind -> notes.addAll(unborne("stimulus", kind, kinds(sessions))));
        rule.of().ifPresent(name -> notes.addAll(unborne("figure", name, figures(sessions))));
        return List.copyOf(notes);
    }

    private static Set<String> kinds(List<Session> sessions) {
        return sessions.stream()
                .flatMap(s -> s.stimuli().values().stream())
                .map(Stimulus::kind)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> figures(List<Session> sessions) {
        return sessions.stream()
                .flatMap(s -> s.figures().stream())
                .map(Figure::of)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Of several names that a rule gives of one condition, those that nothing bears of what was judged. */
    static List<Remark> notJudged(Rule rule, List<Conditions> judged) {
        List<Remark> remarks = new ArrayList<>();
        rule.where().forEach((condition, choice) -> {
            if (choice instanceof Choice.OneOf some && some.names().size() > 1) {
                some.names().stream()
                        .filter(name -> judged.stream().noneMatch(c -> c.has(condition, name)))
                        .forEach(name -> remarks.add(Remark.of("named-not-judged")
                                .with("condition", condition)
                                .with("name", name)));
            }
        });
        return remarks;
    }

    private List<Remark> unborne(String condition, String word, String name) {
        TreeSet<String> borne = new TreeSet<>();
        measured.stream().map(c -> c.get(condition)).flatMap(Optional::stream).forEach(borne::add);
        return unborne(word, name, borne);
    }

    private static List<Remark> unborne(String word, String name, Set<String> borne) {
        if (borne.contains(name)) {
            return List.of();
        }
        Remark unborne = Remark.of("not-measured-under").with("condition", word).with("name", name);
        return List.of(Nearest.to(name, borne)
                .map(nearest -> new Remark("not-measured-under-but", unborne.figures()).with("nearest", nearest))
                .orElse(unborne));
    }
}
