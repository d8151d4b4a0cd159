package org.ellwand.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ellwand.measurement.Reading;

/** The readings of a sitting in few lines: insertions that are read alike stand together. */
final class Steps {
    private Steps() {}

    /** What is done at one placing of the product, or with the open ear. */
    private record Step(String what, String fit, int first, int last, String readings) {
        Map<String, Object> model() {
            return Map.of("what", what, "fit", fit, "first", first, "last", last, "readings", readings);
        }
    }

    static List<Object> of(Sitting sitting) {
        List<Step> steps = new ArrayList<>();
        List<PlannedReading> readings = sitting.readings();
        int from = 0;
        while (from < readings.size()) {
            int to = from;
            while (to < readings.size() && isOneStep(readings.get(from), readings.get(to))) {
                to++;
            }
            add(steps, step(readings.subList(from, to)));
            from = to;
        }
        return steps.stream().map(step -> (Object) step.model()).toList();
    }

    private static boolean isOneStep(PlannedReading a, PlannedReading b) {
        return a.insertion().equals(b.insertion()) && a.cell("fit").equals(b.cell("fit"));
    }

    private static Step step(List<PlannedReading> readings) {
        PlannedReading first = readings.get(0);
        int insertion = first.insertion().orElse(0);
        Map<String, Integer> counted = new LinkedHashMap<>();
        readings.forEach(reading -> counted.merge(text(reading), 1, Integer::sum));
        String all = counted.entrySet().stream()
                .map(one -> one.getKey() + (one.getValue() > 1 ? " (" + one.getValue() + " times)" : ""))
                .collect(Collectors.joining(", "));
        return new Step(insertion == 0 ? "open" : "in place", first.cell("fit"), insertion, insertion, all);
    }

    private static String text(PlannedReading reading) {
        Map<String, String> own = new TreeMap<>(reading.conditions());
        own.remove("fit");
        String device = own.remove("device");
        String sound = reading.stimulus().id();
        if (Reading.FIELD_MICROPHONE.equals(device)) {
            return "field microphone " + sound;
        }
        return own.isEmpty() ? sound : String.join(" ", own.values()) + " " + sound;
    }

    /** Joins a step to the one before it where only the number of the insertion differs. */
    private static void add(List<Step> steps, Step step) {
        Step before = steps.isEmpty() ? step : steps.get(steps.size() - 1);
        if (before.last() == step.first() - 1
                && step.first() > 1
                && before.fit().equals(step.fit())
                && before.readings().equals(step.readings())) {
            steps.set(
                    steps.size() - 1,
                    new Step(before.what(), before.fit(), before.first(), step.last(), step.readings()));
        } else {
            steps.add(step);
        }
    }
}
