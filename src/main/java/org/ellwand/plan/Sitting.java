package org.ellwand.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;
import org.ellwand.measurement.Chain;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.measurement.Uncertainty;

/**
 * One sitting to come: every reading in the order in which it is to be taken.
 *
 * @param id of its session
 * @param file what its files are called, without their endings
 * @param like the earlier sitting that it repeats; absent: there is none
 * @param defaults what holds throughout: ear, side, head, unit, firmware
 * @param uncertainty absent: not known yet, so that the typical sizes stand in
 */
record Sitting(
        String id,
        String file,
        String product,
        Optional<Session> like,
        SortedMap<String, String> defaults,
        Resolution resolution,
        SortedSet<Band> bands,
        Unit levelsIn,
        boolean openEarScaled,
        Optional<Uncertainty> uncertainty,
        List<PlannedReading> readings) {

    /** The same session by several wearers, one after the other, under a name of its own. */
    static Sitting joined(String id, List<Sitting> parts) {
        Sitting first = parts.get(0);
        SortedMap<String, String> common = new TreeMap<>(first.defaults());
        parts.forEach(part -> common.entrySet().retainAll(part.defaults().entrySet()));
        SortedSet<Band> bands = new TreeSet<>();
        parts.forEach(part -> bands.addAll(part.bands()));
        return new Sitting(
                id,
                file(id),
                first.product(),
                first.like(),
                common,
                first.resolution(),
                bands,
                first.levelsIn(),
                first.openEarScaled(),
                first.uncertainty(),
                parts.stream().flatMap(part -> part.readings(common)).toList());
    }

    /** What the files of a session are called that a claim names. */
    static String file(String name) {
        return "plan-" + Text.slug(name);
    }

    /** The readings with what the session as a whole does not say of them. */
    private Stream<PlannedReading> readings(SortedMap<String, String> said) {
        SortedMap<String, String> own = new TreeMap<>(defaults);
        own.entrySet().removeAll(said.entrySet());
        return readings.stream().map(reading -> {
            SortedMap<String, String> conditions = new TreeMap<>(own);
            conditions.putAll(reading.conditions());
            return new PlannedReading(conditions, reading.stimulus(), reading.insertion(), reading.take());
        });
    }

    List<Stimulus> stimuli() {
        return readings.stream()
                .map(PlannedReading::stimulus)
                .distinct()
                .sorted(Loudness::order)
                .toList();
    }

    /** Conditions that no session knows of itself: those of the earlier sitting, and those that its readings name. */
    SortedSet<String> declaredConditions() {
        SortedSet<String> declared =
                new TreeSet<>(like.map(Session::declaredConditions).orElse(Set.of()));
        readings.forEach(reading -> declared.addAll(reading.conditions().keySet()));
        declared.removeAll(Wanted.OF_SITTING);
        declared.removeAll(Wanted.BUILT_IN);
        return declared;
    }

    /** The sitting as a session, were these the levels. */
    Session session(Uncertainty sizes, ToDoubleBiFunction<PlannedReading, Band> levelDb) {
        Map<String, Stimulus> sounds =
                stimuli().stream().collect(Collectors.toMap(Stimulus::id, sound -> sound, (a, b) -> a, TreeMap::new));
        return new Session(
                id,
                "measurements/" + id + ".yaml",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(resolution),
                Optional.of(levelsIn),
                sounds,
                openEarScaled,
                true,
                declaredConditions(),
                sizes,
                readings.stream().map(reading -> curve(reading, levelDb)).toList(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Chain.UNSTATED);
    }

    private CurveReading curve(PlannedReading reading, ToDoubleBiFunction<PlannedReading, Band> levelDb) {
        SortedMap<String, String> conditions = new TreeMap<>(defaults);
        conditions.put("session", id);
        conditions.put("device", product);
        conditions.putAll(reading.conditions());
        conditions.put("stimulus", reading.stimulus().id());
        reading.insertion().ifPresent(number -> conditions.put("insertion", String.valueOf(number)));
        reading.take().ifPresent(number -> conditions.put("take", String.valueOf(number)));
        Map<Band, Spectrum.Level> levels = new TreeMap<>();
        bands.forEach(band -> levels.put(band, Spectrum.Level.measured(levelDb.applyAsDouble(reading, band))));
        return new CurveReading(
                new Conditions(conditions),
                Reading.Values.LEVELS,
                new Spectrum(resolution, levels),
                new Place(id, 1, 1));
    }
}
