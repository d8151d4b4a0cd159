package org.ellwand.measurement;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.input.Nearest;
import org.ellwand.input.Place;

/**
 * Fills in the defaults of a session and holds the conditions of its readings together.
 *
 * <p>The open ear and the field microphone know nothing of the product: setting, fit, firmware and unit are dropped
 * there, wherever they come from, and an insertion that is only a default. An insertion that the row or the column itself
 * names is kept: it tells which of several readings of the open ear this is.
 */
final class ConditionFiller {
    private static final List<String> NO_DEVICES = List.of(Reading.OPEN_EAR, Reading.FIELD_MICROPHONE);

    private final String session;
    private final Map<String, String> defaults;
    private final Map<String, Stimulus> stimuli;
    private final Found problems;
    private final Map<Given, Place> seen = new HashMap<>();
    private final Map<String, Optional<String>> nearest = new HashMap<>();
    private final Map<List<String>, NameList> lists = new HashMap<>();

    /** What was given, and under which conditions. */
    private record Given(String kind, Conditions conditions) {}

    ConditionFiller(String session, Map<String, String> defaults, Map<String, Stimulus> stimuli, Found problems) {
        this.session = session;
        this.defaults = defaults;
        this.stimuli = stimuli;
        this.problems = problems;
    }

    /**
     * The conditions of a reading; empty where they do not go together (reported).
     *
     * @param beside conditions beside the file
     * @param own conditions of the row or column itself
     */
    Optional<Conditions> fill(Map<String, String> beside, Map<String, String> own, Place place) {
        SortedMap<String, String> all = new TreeMap<>(defaults);
        all.putAll(beside);
        all.putAll(own);
        all.put("session", session);
        String device = all.getOrDefault(ConditionNames.DEVICE, "");
        int before = problems.size();
        checkDevice(device, place);
        checkStimulus(all, place);
        if (!isInPlace(device)) {
            all.keySet().removeAll(ConditionNames.OF_THE_PRODUCT);
            if (!own.containsKey(ConditionNames.INSERTION)) {
                all.remove(ConditionNames.INSERTION);
            }
        }
        return problems.size() > before ? Optional.empty() : Optional.of(new Conditions(all, this::listOf));
    }

    /** Readings of the same conditions share the list of their names. */
    private NameList listOf(Collection<String> names) {
        return lists.computeIfAbsent(List.copyOf(names), NameList::new);
    }

    static boolean isInPlace(String device) {
        return !device.equals(Reading.OPEN_EAR) && !device.equals(Reading.FIELD_MICROPHONE);
    }

    private void checkDevice(String device, Place place) {
        if (device.isEmpty()) {
            problems.add(place, "no device: name the 'product' of the session, or a 'device' here");
        } else if (isInPlace(device) && !device.equals(defaults.get(ConditionNames.DEVICE))) {
            // A mistyped open ear would be a product of its own.
            nearest.computeIfAbsent(device, d -> Nearest.to(d, NO_DEVICES))
                    .ifPresent(word -> problems.add(place, "'device: " + device + "' is written '" + word + "'"));
        }
    }

    private void checkStimulus(Map<String, String> all, Place place) {
        String stimulus = all.get(ConditionNames.STIMULUS);
        if (stimulus != null && !stimuli.containsKey(stimulus)) {
            problems.add(
                    place,
                    "'stimulus: " + stimulus + "' is not under 'stimuli'" + Nearest.hint(stimulus, stimuli.keySet())
                            + (stimuli.isEmpty() ? "" : "; there are " + String.join(", ", stimuli.keySet())));
        }
    }

    /** Reports a take that repeats nothing. A figure is no reading of an ear and may have takes of its own. */
    void checkTake(Conditions filled, Place place) {
        String device = filled.get(ConditionNames.DEVICE).orElse("");
        Optional<String> take = filled.get(ConditionNames.TAKE);
        if (isInPlace(device)
                && take.isPresent()
                && filled.get(ConditionNames.INSERTION).isEmpty()) {
            problems.add(
                    place,
                    "'take: " + take.get() + "' without an insertion: takes repeat a reading without"
                            + " taking the product out, so name the insertion");
        }
    }

    /**
     * Reports a reading that was given before.
     *
     * @param kind what else tells two readings apart: {@code curve}, the figure's name, …
     */
    void once(String kind, Conditions conditions, Place place) {
        Place before = seen.putIfAbsent(new Given(kind, conditions), place);
        if (before != null) {
            problems.add(place, "the same " + kind + " was given before, at " + before + ": " + conditions);
        }
    }
}
