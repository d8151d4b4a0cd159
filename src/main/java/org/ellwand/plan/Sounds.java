package org.ellwand.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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

    /** Harmonics are those of a tone. */
    private static final String TONE = "pure tone";

    /** What is looked for between levels. */
    private static final Set<String> BETWEEN_LEVELS = Set.of("onset level", "criterion level");

    /** Of the levels of an earlier sitting: an onset is looked for between two, and three are the least. */
    private static final int FEWEST_OF_SERIES = 3;

    /** Levels are written with one decimal. */
    private static final double SAME_DB = 0.05;

    private static final double SINGLE_DB = 2.01;

    /** How many levels a new series has, and how far apart they are (common practice, no source). */
    private static final int SERIES = 5;

    private static final double SERIES_STEP_DB = 5;

    /** What is looked for lies between two levels of an earlier sitting that are no further from the limit. */
    private static final double NEAR_DB = 10;

    private static final String HARMONICS = "harmonic distortion";

    private final Map<String, Stimulus> measured;
    private final Map<String, Stimulus> known;

    /** @param measured those of an earlier sitting, by their names */
    Sounds(Map<String, Stimulus> measured) {
        this.measured = Collections.unmodifiableMap(new LinkedHashMap<>(measured));
        this.known = new LinkedHashMap<>(measured);
    }

    /** The sounds that a rule speaks of. */
    List<Stimulus> of(Rule rule) {
        if (rule.stimulus().filter(Stimulus.QUIET::equals).isPresent()) {
            return List.of(quiet());
        }
        // What other claims want is no measure of this one: a range has its own ends.
        boolean range = rule.level().filter(LevelChoice.Range.class::isInstance).isPresent();
        List<Stimulus> there = (range ? measured : known)
                .values().stream().filter(sound -> meets(rule, sound)).toList();
        if (rule.between()
                .filter(between -> between.condition().equals("level"))
                .isPresent()) {
            return made(rule);
        }
        if (isBetweenLevels(rule)) {
            return ofSeries(rule);
        }
        return there.isEmpty() ? made(rule) : there;
    }

    /** Whether what a rule speaks of is looked for between levels. */
    static boolean isBetweenLevels(Rule rule) {
        return BETWEEN_LEVELS.contains(rule.quantity());
    }

    /** Whether what a rule speaks of is louder than anybody is to hear. */
    boolean isTooLoud(Rule rule) {
        if (isBetweenLevels(rule)) {
            return middle(rule.limit()) > Loudness.MOST_ON_PEOPLE_DB;
        }
        return of(rule).stream().allMatch(sound -> Loudness.fieldDb(sound) > Loudness.MOST_ON_PEOPLE_DB);
    }

    /** The levels of an earlier sitting, where they are enough of one kind and unit; with those about the limit, where not. */
    private List<Stimulus> ofSeries(Rule rule) {
        Unit unit = rule.limit().unit();
        List<Stimulus> there = measured.values().stream()
                .filter(sound -> meets(rule, sound) && !sound.isQuiet())
                .toList();
        List<Stimulus> alike = there.stream()
                .filter(sound -> sound.levelIn(unit).isPresent())
                .collect(Collectors.groupingBy(Stimulus::kind, TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .max(Comparator.comparingInt(List::size))
                .orElse(List.of());
        if (alike.size() >= FEWEST_OF_SERIES && isAbout(middle(rule.limit()), alike, unit)) {
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

    /** Whether levels lie near a limit on either side; above what people are to hear there need be none. */
    private static boolean isAbout(double limitDb, List<Stimulus> sounds, Unit unit) {
        List<Double> from = sounds.stream()
                .map(sound -> sound.levelIn(unit).orElseThrow() - limitDb)
                .toList();
        return from.stream().anyMatch(off -> off <= SAME_DB && off >= -NEAR_DB - SAME_DB)
                && (limitDb + SERIES_STEP_DB > Loudness.MOST_ON_PEOPLE_DB
                        || from.stream().anyMatch(off -> off >= -SAME_DB && off <= NEAR_DB + SAME_DB));
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

    /** Whether an audit would take what was read under a sound for a rule. */
    static boolean serves(Rule rule, Stimulus sound) {
        return meets(rule, sound) || (sound.isQuiet() && rule.quantity().equals("equivalent input noise"));
    }

    private static boolean meets(Rule rule, Stimulus sound) {
        boolean any = rule.quantity().equals(HARMONICS) ? sound.kind().contains("tone") : !sound.isQuiet();
        boolean kind = rule.stimulus().map(sound.kind()::equals).orElse(any);
        return kind
                && rule.level()
                        .map(level -> !(level instanceof LevelChoice.Range range)
                                || sound.levelIn(range.level().unit())
                                        .filter(range.level()::contains)
                                        .isPresent())
                        .orElse(true);
    }

    private static String kind(Rule rule) {
        return rule.stimulus().orElse(rule.quantity().equals(HARMONICS) ? TONE : DEFAULT_KIND);
    }

    /** A single level, or both ends of a range: every level of it must meet the limit. */
    private List<Stimulus> made(Rule rule) {
        String kind = kind(rule);
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

    /** Levels around an onset, as close together as its tolerance usually is, and none louder than people are to hear. */
    private List<Stimulus> series(String kind, Interval limit) {
        double middle = middle(limit);
        double highest = Math.min(middle + (SERIES - 1) * SERIES_STEP_DB / 2, Loudness.MOST_ON_PEOPLE_DB);
        double top = Math.max(middle, highest);
        return IntStream.range(0, SERIES)
                .mapToObj(i -> made(kind, top - i * SERIES_STEP_DB, limit.unit()))
                .toList();
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
