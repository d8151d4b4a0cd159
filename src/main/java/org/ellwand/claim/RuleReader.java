package org.ellwand.claim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.input.Fields;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;

/** Makes a rule of the keys that were given for it. */
final class RuleReader {
    private static final Map<String, Optional<Resolution>> RESOLUTIONS = resolutions();
    private static final NavigableMap<String, Boolean> FRAMES = new TreeMap<>(Map.of("eardrum", false, "field", true));
    private static final NavigableMap<String, Boolean> COMPARISONS =
            new TreeMap<>(Map.of("difference", false, "ratio", true));

    /** Stands for a limit that was noted as a problem; a rule that holds it is never returned. */
    private static final Interval UNREADABLE = Interval.of(0, 0, Unit.NONE);

    private final Map<String, QuantityForm> forms;
    private final Set<String> declaredConditions;
    private final TargetReader targets;
    private final Problems problems;

    /**
     * What a rule is made of besides its own keys.
     *
     * @param name {@code plain}, or that of another interpretation
     * @param stated names of the keys that the sentence states
     * @param edition what the edition speaks of
     * @param overrides names of the keys that another interpretation overrides; empty for the plain rule
     * @param table the maker's own, as written; empty where there is none
     */
    record Frame(
            String name,
            Set<String> stated,
            Map<String, String> edition,
            Optional<Set<String>> overrides,
            Map<String, String> table) {}

    RuleReader(
            Map<String, QuantityForm> forms, Set<String> declaredConditions, TargetReader targets, Problems problems) {
        this.forms = forms;
        this.declaredConditions = declaredConditions;
        this.targets = targets;
        this.problems = problems;
    }

    /** Every key that a rule may hold. */
    List<String> accepted() {
        Set<String> all = new LinkedHashSet<>();
        Arrays.stream(RuleKey.values()).map(RuleKey::text).forEach(all::add);
        all.addAll(declaredConditions);
        return List.copyOf(all);
    }

    /** Every name of a condition that readings may have. */
    List<String> conditions() {
        return RuleKey.conditions(declaredConditions);
    }

    /** The rule; empty where something was wrong with it, which was noted. */
    Optional<Rule> read(Given given, Frame frame, boolean complain) {
        Optional<QuantityForm> form = form(given, complain);
        if (form.isEmpty()) {
            return Optional.empty();
        }
        if (!frame.table().isEmpty() && !form.get().usable().contains("table")) {
            problems.add(
                    given.place(), "'table' cannot be used by " + form.get().name());
        }
        Given usable = Applicable.of(form.get(), given, declaredConditions, problems);
        if (complain) {
            Applicable.refuseMissing(form.get(), usable, given.place(), problems);
        }
        return rule(form.get(), new RuleWords(usable, problems), frame);
    }

    private Optional<QuantityForm> form(Given given, boolean complain) {
        Optional<YamlNode> node = given.value(RuleKey.QUANTITY);
        if (node.isEmpty()) {
            if (complain) {
                problems.add(given.place(), "a rule needs 'quantity': one of " + String.join(", ", forms.keySet()));
            }
            return Optional.empty();
        }
        return Fields.text("quantity", node.get(), problems).flatMap(name -> {
            if (!forms.containsKey(name)) {
                problems.add(node.get().place(), Fields.unknown("quantity", name, forms.keySet()));
            }
            return Optional.ofNullable(forms.get(name));
        });
    }

    private Optional<Rule> rule(QuantityForm form, RuleWords words, Frame frame) {
        Optional<Interval> limit =
                words.given().has(RuleKey.LIMIT) ? new LimitReader(form, words).read() : Optional.empty();
        Optional<Between> between = between(words);
        Map<String, Choice> where = where(words, between, frame.edition());
        Map<String, String> method = new MethodReader(words).read();
        boolean field = words.choice(RuleKey.REFERRED_TO, FRAMES).orElse(false);
        boolean ratio = words.choice(RuleKey.COMPARED_BY, COMPARISONS).orElse(false);
        Rule rule = new Rule(
                frame.name(),
                form.name(),
                limit.orElse(UNREADABLE),
                statistic(words),
                words.bands(),
                words.choice(RuleKey.RESOLUTION, RESOLUTIONS).flatMap(r -> r),
                words.choice(RuleKey.WEIGHTING, weightings()),
                where,
                words.text(RuleKey.STIMULUS),
                level(words),
                field,
                between,
                ratio,
                words.population(RuleKey.EARS),
                words.population(RuleKey.UNITS),
                words.text(RuleKey.OF),
                words.reference(),
                words.text(RuleKey.TARGET)
                        .flatMap(text -> targets.read(text, words.given().place(RuleKey.TARGET))),
                method,
                written(words.given(), frame, true),
                written(words.given(), frame, false),
                frame.table(),
                words.given().place());
        // Made in any case, so that what is wrong with the other keys is told as well.
        return limit.map(interval -> rule);
    }

    private static Map<String, String> written(Given given, Frame frame, boolean stated) {
        List<YamlNode.Entry> entries = new ArrayList<>(given.entries());
        entries.removeIf(entry -> frame.overrides()
                .map(own -> stated || !own.contains(entry.key()))
                .orElse(frame.stated().contains(entry.key()) != stated));
        return RuleWords.written(entries);
    }

    private Optional<Between> between(RuleWords words) {
        Optional<Between> between = words.between();
        List<String> comparable = Comparisons.comparable(declaredConditions);
        between.filter(b -> !comparable.contains(b.condition()))
                .ifPresent(b -> words.problem(RuleKey.BETWEEN, Fields.unknown("condition", b.condition(), comparable)));
        return between;
    }

    /** The rule's own conditions, and those of its edition that it does not speak of itself. */
    private Map<String, Choice> where(RuleWords words, Optional<Between> between, Map<String, String> edition) {
        Map<String, Choice> where = new LinkedHashMap<>();
        for (String name : words.given().items().keySet()) {
            if (conditions().contains(name)) {
                words.names(name).ifPresent(choice -> where.put(name, choice));
            }
        }
        String compared = between.map(Between::condition).orElse("");
        edition.forEach((name, value) -> {
            if (!name.equals(compared)) {
                where.putIfAbsent(name, new Choice.OneOf(List.of(value)));
            }
        });
        return Collections.unmodifiableMap(where);
    }

    private static Optional<LevelChoice> level(RuleWords words) {
        return words.text(RuleKey.LEVEL)
                .flatMap(text -> text.equals("all")
                        ? Optional.of(new LevelChoice.All())
                        : words.phrase(
                                RuleKey.LEVEL,
                                text,
                                t -> new LevelChoice.Range(Levels.interval(
                                        t,
                                        words.choice(RuleKey.LEVEL_WEIGHTING, weightings())
                                                .map(Weighting::name)))));
    }

    private static Optional<Statistic> statistic(RuleWords words) {
        Map<String, Statistic> accepted = new LinkedHashMap<>();
        Arrays.stream(Statistic.values()).forEach(s -> accepted.put(s.text(), s));
        return words.choice(RuleKey.STATISTIC, accepted);
    }

    private static Map<String, Weighting> weightings() {
        Map<String, Weighting> accepted = new LinkedHashMap<>();
        Arrays.stream(Weighting.values()).forEach(w -> accepted.put(w.name(), w));
        return accepted;
    }

    private static Map<String, Optional<Resolution>> resolutions() {
        Map<String, Optional<Resolution>> accepted = new LinkedHashMap<>();
        accepted.put("third-octave", Optional.of(Resolution.THIRD_OCTAVE));
        accepted.put("octave", Optional.of(Resolution.OCTAVE));
        accepted.put("as measured", Optional.empty());
        return accepted;
    }
}
