package org.ellwand.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Interval;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Between;
import org.ellwand.claim.LevelChoice;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Stimulus;

/** The test sounds of a sitting: those that were used before, and new ones where a rule asks for what is not there. */
final class Sounds {
    /** Where neither rule nor earlier sittings name a kind (common practice, no source). */
    static final String DEFAULT_KIND = "pink noise";

    /** What is looked for between levels. */
    private static final Set<String> SERIES = Set.of("onset level", "criterion level");

    private static final int FEWEST_OF_SERIES = 3;

    /** Levels are written with one decimal. */
    private static final double SAME_DB = 0.05;

    private static final double SINGLE_DB = 2.01;

    /** Between the levels of a series (common practice, no source). */
    private static final double SERIES_STEP_DB = 10;

    private final Map<String, Stimulus> known;

    Sounds(Map<String, Stimulus> known) {
        this.known = new LinkedHashMap<>(known);
    }

    /** The sounds that a rule speaks of. */
    List<Stimulus> of(Rule rule) {
        if (rule.stimulus().filter(Stimulus.QUIET::equals).isPresent()) {
            return List.of(quiet());
        }
        List<Stimulus> there =
                known.values().stream().filter(sound -> meets(rule, sound)).toList();
        if (rule.between()
                .filter(between -> between.condition().equals("level"))
                .isPresent()) {
            return made(rule);
        }
        if (SERIES.contains(rule.quantity())) {
            return ofSeries(rule, there);
        }
        return there.isEmpty() ? made(rule) : there;
    }

    /** Whether what a rule speaks of is louder than anybody is to hear. */
    boolean isTooLoud(Rule rule) {
        if (SERIES.contains(rule.quantity())) {
            return middle(rule.limit()) > Loudness.MOST_ON_PEOPLE_DB;
        }
        return of(rule).stream().allMatch(sound -> Loudness.fieldDb(sound) > Loudness.MOST_ON_PEOPLE_DB);
    }

    /** The levels that are there, where they are enough of one kind and unit; with those about the limit, where not. */
    private List<Stimulus> ofSeries(Rule rule, List<Stimulus> there) {
        Unit unit = rule.limit().unit();
        List<Stimulus> alike = there.stream()
                .filter(sound -> !sound.isQuiet() && sound.levelIn(unit).isPresent())
                .collect(Collectors.groupingBy(Stimulus::kind, TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .max(Comparator.comparingInt(List::size))
                .orElse(List.of());
        if (alike.size() >= FEWEST_OF_SERIES) {
            return there;
        }
        String kind = alike.stream()
                .findFirst()
                .map(Stimulus::kind)
                .orElse(rule.stimulus().orElse(DEFAULT_KIND));
        Map<Double, Stimulus> byLevel = new TreeMap<>();
        series(kind, rule.limit())
                .forEach(sound -> byLevel.put(sound.levelIn(unit).orElseThrow(), sound));
        alike.forEach(sound -> byLevel.put(sound.levelIn(unit).orElseThrow(), sound));
        return List.copyOf(byLevel.values());
    }

    Stimulus quiet() {
        return known.values().stream()
                .filter(Stimulus::isQuiet)
                .findFirst()
                .orElseGet(() -> add(new Stimulus("quiet", Stimulus.QUIET, List.of(), Optional.empty())));
    }

    /** A sound of a kind quiet enough for the open ear: the quietest that is planned, or one made for it. */
    Stimulus sparing(String kind, List<Stimulus> planned) {
        return planned.stream()
                .filter(sound -> sound.kind().equals(kind) && Loudness.fieldDb(sound) <= Loudness.OPEN_EAR_DB)
                .min(Loudness::order)
                .or(() -> known.values().stream()
                        .filter(sound -> sound.kind().equals(kind) && Loudness.fieldDb(sound) <= Loudness.OPEN_EAR_DB)
                        .min(Loudness::order))
                .orElseGet(() -> made(
                        kind,
                        Loudness.SPARING_DB,
                        planned.stream()
                                .filter(sound -> sound.kind().equals(kind))
                                .flatMap(sound -> sound.levels().stream())
                                .map(Amount::unit)
                                .findFirst()
                                .orElse(Unit.DB_SPL)));
    }

    private static boolean meets(Rule rule, Stimulus sound) {
        boolean kind = rule.stimulus().map(sound.kind()::equals).orElse(!sound.isQuiet());
        return kind
                && rule.level()
                        .map(level -> !(level instanceof LevelChoice.Range range)
                                || sound.levelIn(range.level().unit())
                                        .filter(range.level()::contains)
                                        .isPresent())
                        .orElse(true);
    }

    /** A single level, or both ends of a range: every level of it must meet the limit. */
    private List<Stimulus> made(Rule rule) {
        String kind = rule.stimulus().orElse(DEFAULT_KIND);
        Optional<Between> levels =
                rule.between().filter(between -> between.condition().equals("level"));
        if (levels.isPresent()) {
            return Stream.of(levels.get().first(), levels.get().second())
                    .flatMap(level -> named(kind, level).stream())
                    .toList();
        }
        if (!(rule.level().orElse(new LevelChoice.All()) instanceof LevelChoice.Range range)) {
            return List.of(made(kind, Loudness.SPARING_DB, Unit.DB_SPL));
        }
        Interval level = range.level();
        if (level.upper() - level.lower() <= SINGLE_DB) {
            return List.of(made(kind, (level.lower() + level.upper()) / 2, level.unit()));
        }
        List<Stimulus> ends = new ArrayList<>();
        if (level.hasLower()) {
            ends.add(made(kind, level.lower(), level.unit()));
        }
        if (level.hasUpper()) {
            ends.add(made(kind, level.upper(), level.unit()));
        }
        return ends;
    }

    /** A level as {@code between} names it, which the reader of claims has read as one. */
    private Optional<Stimulus> named(String kind, String level) {
        try {
            Amount amount = Phrases.amount(level);
            return Optional.of(made(kind, amount.value(), amount.unit()));
        } catch (PhraseException e) {
            return Optional.empty();
        }
    }

    /** Levels around an onset: it is looked for between them, and three are the least. */
    private List<Stimulus> series(String kind, Interval limit) {
        double middle = middle(limit);
        double top = Math.max(middle, Math.min(middle + SERIES_STEP_DB, Loudness.MOST_ON_PEOPLE_DB));
        double below = top - middle < SERIES_STEP_DB / 2 ? middle - 2 * SERIES_STEP_DB : middle;
        return List.of(
                made(kind, middle - SERIES_STEP_DB, limit.unit()),
                made(kind, below, limit.unit()),
                made(kind, top, limit.unit()));
    }

    private static double middle(Interval limit) {
        return limit.hasLower() && limit.hasUpper()
                ? (limit.lower() + limit.upper()) / 2
                : limit.hasLower() ? limit.lower() : limit.upper();
    }

    private Stimulus made(String kind, double levelDb, Unit unit) {
        return known.values().stream()
                .filter(sound -> sound.kind().equals(kind)
                        && sound.levelIn(unit)
                                .filter(there -> Math.abs(there - levelDb) < SAME_DB)
                                .isPresent())
                .findFirst()
                .orElseGet(() -> added(kind, levelDb, unit));
    }

    private Stimulus added(String kind, double levelDb, Unit unit) {
        String number = Text.number(levelDb, 1).replaceFirst("\\.0$", "");
        String id = kind.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-") + "-" + number;
        Amount level = new Amount(Math.round(levelDb * 10) / 10.0, unit, number.contains(".") ? 1 : 0);
        return add(new Stimulus(id, kind, List.of(level), Optional.empty()));
    }

    private Stimulus add(Stimulus sound) {
        Stimulus before = known.putIfAbsent(sound.id(), sound);
        return before == null ? sound : before;
    }
}
