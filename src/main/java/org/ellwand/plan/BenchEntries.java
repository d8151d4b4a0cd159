package org.ellwand.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Stimulus;

/** The entries of a session of figures, traces and harmonics, each once, and the empty sheets that they name. */
final class BenchEntries {
    /** What is to be put in. */
    static final String FILL = "FILL";

    private static final int FIRST_HARMONIC = 1;
    private static final int LAST_HARMONIC = 5;
    private static final String EMPTY_TRACE = "time (s),level (dB SPL)\n";

    final List<String> steps = new ArrayList<>();
    final List<String> steady = new ArrayList<>();
    final List<String> harmonics = new ArrayList<>();
    final List<String> figures = new ArrayList<>();
    final Map<String, Stimulus> stimuli = new LinkedHashMap<>();

    /** Sounds of a programme, which the open ear hears too. */
    final Map<String, Stimulus> programmes = new LinkedHashMap<>();

    final SortedMap<String, String> sheets = new TreeMap<>();
    private final TreeSet<String> conditions = new TreeSet<>();
    private final String id;
    private final String file;
    private final Sounds sounds;
    private final Wearer wearer;

    /**
     * @param id of the session
     * @param file what its files are called, without what tells them apart
     */
    BenchEntries(String id, String file, Sounds sounds, Wearer wearer) {
        this.id = id;
        this.file = file;
        this.sounds = sounds;
        this.wearer = wearer;
    }

    String id() {
        return id;
    }

    String file() {
        return file;
    }

    boolean isEmpty() {
        return sheets.isEmpty() && figures.isEmpty();
    }

    /** The entries of all traces: steps first. */
    List<String> traces() {
        return Stream.concat(steps.stream(), steady.stream()).toList();
    }

    /** Conditions that no session knows of itself. */
    List<String> declared() {
        return conditions.stream()
                .filter(name -> !Wanted.OF_SITTING.contains(name) && !Wanted.BUILT_IN.contains(name))
                .toList();
    }

    void figure(Rule rule, SortedMap<String, String> conditions) {
        String unit = rule.limit().unit() == Unit.NONE
                ? ""
                : " " + rule.limit().unit().symbol();
        String size = rule.limit().unit().isLevel() ? " dB" : unit;
        once(
                figures,
                "{of: " + Text.quoted(rule.of().orElse("")) + ", value: " + FILL + unit + ", uncertainty: " + FILL
                        + size + said(conditions) + "}");
    }

    void step(Rule rule, SortedMap<String, String> conditions) {
        String file = file(rule.quantity().equals("attack time") ? "step-up" : "step-down", conditions);
        once(
                steps,
                "{file: " + Text.quoted(file) + said(conditions) + ", step: {at: " + FILL + " s, from: " + FILL
                        + " dB SPL, to: " + FILL + " dB SPL}}");
        sheets.put(file, EMPTY_TRACE);
    }

    void harmonics(Rule rule, SortedMap<String, String> conditions) {
        of(rule).forEach(sound -> harmonics(with(conditions, "stimulus", sound.id())));
        if (!isNamed(rule)) {
            harmonics(conditions);
        }
    }

    private void harmonics(SortedMap<String, String> conditions) {
        String file = file("harmonics", conditions);
        once(
                harmonics,
                "{file: " + Text.quoted(file) + ", layout: harmonics, fundamental: " + FILL + " Hz" + said(conditions)
                        + "}");
        StringBuilder sheet = new StringBuilder("order,level (dB SPL)\n");
        for (int order = FIRST_HARMONIC; order <= LAST_HARMONIC; order++) {
            sheet.append(order).append(",\n");
        }
        sheets.put(file, sheet.toString());
    }

    /**
     * Of a steady sound, at every placing; the sound is named where the rule names one.
     *
     * @param earlier who wore it before; absent: as all else
     */
    void drift(Rule rule, SortedMap<String, String> conditions, int insertions, Optional<Wearer> earlier) {
        SortedMap<String, String> inPlace = inPlace(earlier.orElse(wearer), conditions);
        of(rule).forEach(sound -> repeated("steady", with(inPlace, "stimulus", sound.id()), insertions));
        if (!isNamed(rule)) {
            repeated("steady", inPlace, insertions);
        }
    }

    private static boolean isNamed(Rule rule) {
        return rule.stimulus().isPresent() || rule.level().isPresent();
    }

    /** The sounds that a rule names; none where any will do. */
    private List<Stimulus> of(Rule rule) {
        List<Stimulus> named = isNamed(rule) ? sounds.of(rule) : List.of();
        named.forEach(sound -> stimuli.put(sound.id(), sound));
        return named;
    }

    /** Of a programme, once with the open ear and at every placing of the product. */
    void programme(Rule rule, SortedMap<String, String> conditions, int insertions) {
        for (Stimulus sound : sounds.of(rule)) {
            stimuli.put(sound.id(), sound);
            programmes.put(sound.id(), sound);
            SortedMap<String, String> open = with(worn(), "stimulus", sound.id());
            open.remove("unit");
            open.put("device", Reading.OPEN_EAR);
            trace(file("programme", open), open);
            repeated("programme", with(inPlace(wearer, conditions), "stimulus", sound.id()), insertions);
        }
    }

    private SortedMap<String, String> worn() {
        return new TreeMap<>(wearer.conditions());
    }

    private static SortedMap<String, String> inPlace(Wearer who, SortedMap<String, String> conditions) {
        SortedMap<String, String> inPlace = new TreeMap<>(who.conditions());
        inPlace.putAll(conditions);
        return inPlace;
    }

    private void repeated(String what, SortedMap<String, String> conditions, int insertions) {
        for (int insertion = 1; insertion <= insertions; insertion++) {
            trace(
                    file(what, with(conditions, "insertion", String.valueOf(insertion))),
                    with(conditions, "insertion", String.valueOf(insertion)));
        }
    }

    private void trace(String file, SortedMap<String, String> conditions) {
        once(steady, "{file: " + Text.quoted(file) + said(conditions) + "}");
        sheets.put(file, EMPTY_TRACE);
    }

    private static SortedMap<String, String> with(SortedMap<String, String> conditions, String name, String value) {
        SortedMap<String, String> more = new TreeMap<>(conditions);
        more.put(name, value);
        return more;
    }

    private static void once(List<String> lines, String line) {
        if (!lines.contains(line)) {
            lines.add(line);
        }
    }

    /** Named after what tells it apart; whose ear it is does not. */
    private String file(String what, SortedMap<String, String> conditions) {
        Stream<String> values = conditions.entrySet().stream()
                .filter(one -> !worn().containsKey(one.getKey()))
                .map(Map.Entry::getValue);
        return file + "-" + Text.slug(Stream.concat(Stream.of(what), values).collect(Collectors.joining(" "))) + ".csv";
    }

    private String said(SortedMap<String, String> of) {
        conditions.addAll(of.keySet());
        return of.entrySet().stream()
                .map(one -> ", " + one.getKey() + ": " + Text.quoted(one.getValue()))
                .collect(Collectors.joining());
    }
}
