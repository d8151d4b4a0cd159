package org.ellwand.measurement;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Unit;
import org.ellwand.input.YamlNode;

/** One session file as it is being read. */
final class SessionDraft {
    static final List<String> KEYS = List.of(
            "session",
            "measured",
            "rig",
            "place",
            "product",
            "resolution",
            "levels in",
            "stimuli",
            "open ear",
            "settings switched",
            "conditions",
            "uncertainty",
            "calibration",
            "averaging",
            "overload",
            "settings weakest first",
            "open by design",
            "data",
            "calibrator",
            "recordings",
            "traces",
            "figures");
    static final String DAY_OR_MONTH_FIRST = "\\d+ *[./] *\\d+ *[./] *\\d+[\\s\\S]*";

    static final Map<String, Boolean> OPEN_EAR = words("measured", false, "scaled", true);
    static final Map<String, Boolean> SWITCHED = words("in place", true, "between insertions", false);
    static final Map<String, Unit> LEVELS_IN = Map.of("dB SPL", Unit.DB_SPL);
    static final Map<String, Resolution> RESOLUTIONS = resolutions();

    private final String file;
    private final Keys keys;
    private final Found problems;
    private final DataFiles files;
    private final Set<String> declared;
    private final Set<String> conditions;
    private final Set<String> dataFiles = new LinkedHashSet<>();

    SessionDraft(Path folder, String file, Keys keys, Consumer<String> found) {
        this.file = file;
        this.keys = keys;
        this.problems = keys.problems();
        this.files = new DataFiles(folder, file, problems, found);
        this.declared = declared();
        this.conditions = ConditionNames.with(declared);
    }

    private static Map<String, Boolean> words(String first, boolean a, String second, boolean b) {
        SortedMap<String, Boolean> words = new TreeMap<>();
        words.put(first, a);
        words.put(second, b);
        return Collections.unmodifiableMap(words);
    }

    private static Map<String, Resolution> resolutions() {
        Map<String, Resolution> words = new LinkedHashMap<>();
        for (Resolution resolution : Resolution.values()) {
            words.put(resolution.text(), resolution);
        }
        return Collections.unmodifiableMap(words);
    }

    private Set<String> declared() {
        Set<String> names = new TreeSet<>();
        for (String name : keys.texts("conditions")) {
            if (KEYS.contains(name) || ConditionNames.BUILT_IN.contains(name) || ConditionNames.TAKEN.contains(name)) {
                problems.add(
                        keys.placeOf("conditions"),
                        "'" + name + "' is a name with a meaning of its own; call the condition something else");
            } else if (!names.add(name)) {
                problems.add(keys.placeOf("conditions"), "'" + name + "' is declared twice");
            }
        }
        return Collections.unmodifiableSet(names);
    }

    /** The session; of no use where a problem was reported. */
    Session read() {
        keys.onlyKnown("a session", ConditionNames.after(KEYS, conditions));
        keys.need("session", "give the session a name");
        String id = keys.text("session").orElse("");
        Map<String, Stimulus> stimuli = StimulusReader.read(keys);
        ConditionFiller filler = new ConditionFiller(id, keys.conditions(conditions), stimuli, problems);
        Optional<Resolution> resolution = keys.choice("resolution", RESOLUTIONS);
        Optional<Unit> levelsIn = keys.choice("levels in", LEVELS_IN);
        Uncertainty uncertainty =
                new UncertaintyReader(resolution.orElse(Resolution.THIRD_OCTAVE), problems).read(keys);
        List<DataEntry> entries = entries();
        needForCurves(entries);
        needForHarmonics(entries, uncertainty);
        CurveReader curves = new CurveReader(filler, conditions, resolution, levelsIn, problems);
        entries.forEach(curves::read);
        RecordingReader recordings = new RecordingReader(filler, conditions, files, resolution, problems);
        recordings.read(id, keys);
        dataFiles.addAll(recordings.dataFiles());
        List<CurveReading> readings = joined(curves.readings(), recordings.readings());
        Optional<Boolean> switched = keys.choice("settings switched", SWITCHED);
        if (!keys.has("settings switched")) {
            new SwitchCheck(keys.placeOfKey(keys.has("data") ? "data" : "recordings"), problems).check(readings);
        }
        List<Trace> traces =
                joined(new TraceReader(filler, conditions, files, dataFiles, levelsIn).read(keys), recordings.traces());
        List<Figure> figures = new FigureReader(filler, conditions).read(keys);
        return new Session(
                id,
                file,
                measured(),
                keys.text("rig"),
                keys.text("place"),
                resolution,
                levelsIn,
                stimuli,
                keys.choice("open ear", OPEN_EAR).orElse(false),
                switched.orElse(false),
                declared,
                uncertainty,
                readings,
                traces,
                joined(curves.harmonics(), recordings.harmonics()),
                figures,
                List.copyOf(dataFiles),
                ChainReader.read(keys).with(recordings.notes()));
    }

    /** A day that is written in another order is refused, since nobody is sure which number is the month. */
    private Optional<String> measured() {
        Optional<String> measured = keys.text("measured");
        measured.filter(text -> text.matches(DAY_OR_MONTH_FIRST))
                .ifPresent(text -> problems.add(
                        keys.placeOf("measured"), "'measured: " + text + "': expected a date as 2026-06-11"));
        return measured;
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return List.copyOf(all);
    }

    /** Whether a recording gives band levels, as it does unless it says otherwise. */
    private boolean recordsBands() {
        return keys.list("recordings").stream()
                .anyMatch(entry -> entry instanceof YamlNode.Mapping mapping
                        && mapping.get("gives")
                                .map(gives -> gives instanceof YamlNode.Scalar word
                                        && word.text().equals("bands"))
                                .orElse(true));
    }

    private List<DataEntry> entries() {
        List<DataEntry> entries = new ArrayList<>();
        for (Keys entry : keys.mappings("data")) {
            DataEntry.read(entry, conditions, files).ifPresent(data -> {
                entries.add(data);
                dataFiles.add(data.file().relative());
            });
        }
        return entries;
    }

    /** Without the tone's frequency nothing tells which size a harmonic takes of a cause whose sizes differ. */
    private void needForHarmonics(List<DataEntry> entries, Uncertainty uncertainty) {
        if (uncertainty instanceof Uncertainty.Declared declared) {
            declared.causes().stream()
                    .filter(cause -> cause.unit() == Unit.DB && cause.dependsOnFrequency())
                    .findFirst()
                    .ifPresent(cause -> entries.stream()
                            .filter(entry ->
                                    entry.isHarmonics() && entry.fundamental().isEmpty())
                            .forEach(entry -> problems.add(
                                    entry.place(),
                                    "'fundamental' is missing: the size of '" + cause.name()
                                            + "' differs by frequency, so give the tone's, as 'fundamental: 500 Hz'")));
        }
    }

    private void needForCurves(List<DataEntry> entries) {
        if (keys.has("data") || keys.has("recordings")) {
            keys.need("uncertainty", UncertaintyReader.NEEDED);
        }
        boolean recorded = recordsBands();
        if (recorded || entries.stream().anyMatch(entry -> !entry.isHarmonics())) {
            keys.need("resolution", "expected one of " + String.join(", ", RESOLUTIONS.keySet()));
        }
        if (recorded || entries.stream().anyMatch(DataEntry::isLevels)) {
            keys.need("levels in", "write 'dB SPL' where the bands carry no frequency weighting");
            keys.need("stimuli", "say what sounds the levels were measured under");
        }
    }
}
