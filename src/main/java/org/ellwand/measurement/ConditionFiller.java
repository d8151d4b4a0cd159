package org.ellwand.measurement;

import java.util.Arrays;
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
    private static final String SESSION = "session";
    private static final List<String> NO_DEVICES = List.of(Reading.OPEN_EAR, Reading.FIELD_MICROPHONE);

    private final String session;
    private final Map<String, String> defaults;
    private final Map<String, Stimulus> stimuli;
    private final Found problems;
    /** Where what was given stands, by kind and conditions. */
    private final Map<String, Map<Conditions, Place>> seen = new HashMap<>();

    private final Map<String, Optional<String>> nearest = new HashMap<>();
    private final Map<List<String>, NameList> lists = new HashMap<>();
    private final Map<Shape, Filling> fillings = new HashMap<>();

    /**
     * What readings have in common whose conditions are put together in the same way.
     *
     * @param own names of the conditions of the row or column itself
     */
    private record Shape(Map<String, String> beside, List<String> own, boolean inPlace) {}

    /** Puts the conditions of readings together: a lot has a hundred thousand of a few shapes. */
    private static final class Filling {
        private final NameList names;
        /** What they are where the row or column does not say otherwise. */
        private final String[] texts;
        /** Where the row's or column's own go, in their order; negative where they are dropped. */
        private final int[] places;

        Filling(NameList names, String[] texts, int[] places) {
            this.names = names;
            this.texts = texts;
            this.places = places;
        }

        Conditions of(Collection<String> own) {
            String[] filled = Arrays.copyOf(texts, texts.length);
            int next = 0;
            for (String text : own) {
                int place = places[next++];
                if (place >= 0) {
                    filled[place] = text;
                }
            }
            return new Conditions(names, filled);
        }
    }

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
        String device = given(ConditionNames.DEVICE, beside, own).orElse("");
        int before = problems.size();
        checkDevice(device, place);
        given(ConditionNames.STIMULUS, beside, own).ifPresent(stimulus -> checkStimulus(stimulus, place));
        if (problems.size() > before) {
            return Optional.empty();
        }
        Shape shape = new Shape(beside, List.copyOf(own.keySet()), isInPlace(device));
        return Optional.of(fillings.computeIfAbsent(shape, this::filling).of(own.values()));
    }

    /** What the row or column says of a condition, else what stands beside the file, else the session. */
    private Optional<String> given(String name, Map<String, String> beside, Map<String, String> own) {
        Map<String, String> under = beside.containsKey(name) ? beside : defaults;
        return Optional.ofNullable((own.containsKey(name) ? own : under).get(name));
    }

    private Filling filling(Shape shape) {
        SortedMap<String, String> all = new TreeMap<>(defaults);
        all.putAll(shape.beside());
        shape.own().forEach(name -> all.put(name, ""));
        all.put(SESSION, session);
        if (!shape.inPlace()) {
            all.keySet().removeAll(ConditionNames.OF_THE_PRODUCT);
            if (!shape.own().contains(ConditionNames.INSERTION)) {
                all.remove(ConditionNames.INSERTION);
            }
        }
        NameList names = lists.computeIfAbsent(List.copyOf(all.keySet()), NameList::new);
        int[] places = shape.own().stream()
                .mapToInt(name -> name.equals(SESSION) ? -1 : names.place(name))
                .toArray();
        return new Filling(names, all.values().toArray(String[]::new), places);
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

    private void checkStimulus(String stimulus, Place place) {
        if (!stimuli.containsKey(stimulus)) {
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
        Place before = seen.computeIfAbsent(kind, k -> new HashMap<>()).putIfAbsent(conditions, place);
        if (before != null) {
            problems.add(place, "the same " + kind + " was given before, at " + before + ": " + conditions);
        }
    }
}
