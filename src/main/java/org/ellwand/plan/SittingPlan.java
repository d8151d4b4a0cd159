package org.ellwand.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Target;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;

/**
 * Merges what several claims want into one sitting: every reading once, as often as the most demanding claim needs it. The
 * open ear first and only at quiet levels, then insertion by insertion, within each the quiet sounds first, the loud last.
 * Whoever wears the product reads the same: a lot of many units is gone through once and not anew for each.
 */
final class SittingPlan {
    private static final int OPEN_EAR_TAKES = 2;
    private static final double FIRST_BAND_HZ = 100;
    private static final double LAST_BAND_HZ = 10_000;
    private static final List<String> VARIED = List.of("setting", "fit", "firmware");

    private final String product;
    private final Optional<Session> like;
    private final List<Session> sessions;
    private final Sounds sounds;
    private Resolution resolution;
    private final Map<Group, Integer> insertions = new LinkedHashMap<>();
    private final Map<String, String> constant = new TreeMap<>();
    private boolean field;
    private final List<PlannedReading> readings;
    private final SortedSet<Band> bands;

    /** What is read alike in every insertion. */
    private record Group(SortedMap<String, String> conditions, Stimulus stimulus) {}

    /**
     * What these claims want of a product.
     *
     * @param like the earlier sitting whose sounds, bands and sizes are taken over
     * @param sessions that tell what varies, where there is none to be like
     */
    SittingPlan(String product, Optional<Session> like, List<Session> sessions, List<Wanted> wanted) {
        this.product = product;
        this.like = like;
        this.sessions = like.map(List::of).orElse(sessions);
        this.sounds = new Sounds(like.map(Session::stimuli).orElse(Map.of()));
        this.resolution = like.flatMap(Session::resolution).orElse(Resolution.THIRD_OCTAVE);
        name(wanted);
        wanted.forEach(this::add);
        List<PlannedReading> all = new ArrayList<>(openEar());
        all.addAll(inPlace());
        this.readings = List.copyOf(all);
        this.bands = bands();
    }

    private void add(Wanted wanted) {
        for (Rule rule : wanted.rules()) {
            field |= rule.referredToField();
            resolve(rule);
            for (SortedMap<String, String> conditions : Wanted.combinations(rule, product, sessions)) {
                constant.forEach((name, value) -> conditions.putIfAbsent(name, value));
                for (Stimulus sound : sounds.of(rule)) {
                    if (Loudness.fieldDb(sound) <= Loudness.MOST_ON_PEOPLE_DB) {
                        insertions.merge(new Group(conditions, sound), wanted.insertions(), Math::max);
                        if (rule.quantity().equals("equivalent input noise")) {
                            insertions.merge(new Group(conditions, sounds.quiet()), wanted.insertions(), Math::max);
                        }
                    }
                }
            }
        }
    }

    /** Where nothing was measured yet, a target that knows octaves alone is to be met by octaves. */
    private void resolve(Rule rule) {
        boolean octaves = rule.target()
                .filter(target -> target instanceof Target.Sheet sheet && isOfOctaves(sheet.curve()))
                .isPresent();
        if (like.isEmpty() && octaves && rule.resolution().isEmpty()) {
            resolution = Resolution.OCTAVE;
        }
    }

    private static boolean isOfOctaves(Spectrum curve) {
        return curve.bands().stream()
                .allMatch(band ->
                        Band.nearest(Resolution.OCTAVE, band.nominalHz()).nominalHz() == band.nominalHz());
    }

    /** A condition that never varied is what it was; one never measured is what a single rule names. */
    private void name(List<Wanted> wanted) {
        for (String name : VARIED) {
            Set<String> known = new TreeSet<>(Wanted.known(name, product, sessions));
            if (known.isEmpty()) {
                wanted.stream()
                        .flatMap(one -> one.rules().stream())
                        .flatMap(rule -> Wanted.combinations(rule, product, sessions).stream())
                        .forEach(some -> Optional.ofNullable(some.get(name)).ifPresent(known::add));
            }
            if (known.size() == 1) {
                constant.put(name, known.iterator().next());
            }
        }
    }

    /** The sitting of one who wears it. */
    Sitting of(Wearer wearer) {
        SortedMap<String, String> defaults = new TreeMap<>(wearer.conditions());
        defaults.putAll(firmware());
        String id = "plan-" + Text.slug(like.map(Session::id).orElse(product) + " " + wearer.suffix());
        return new Sitting(
                id,
                id,
                product,
                like,
                defaults,
                resolution,
                bands,
                like.flatMap(Session::levelsIn).orElse(Unit.DB_SPL),
                true,
                like.map(Session::uncertainty),
                readings);
    }

    /** The firmware, where it never varied: it holds throughout. */
    private Map<String, String> firmware() {
        return Optional.ofNullable(constant.get("firmware"))
                .map(one -> Map.of("firmware", one))
                .orElse(Map.of());
    }

    private List<Stimulus> planned() {
        return insertions.keySet().stream()
                .map(Group::stimulus)
                .distinct()
                .sorted(Loudness::order)
                .toList();
    }

    private List<PlannedReading> openEar() {
        Set<Stimulus> open = new LinkedHashSet<>();
        planned().stream()
                .filter(sound -> !sound.isQuiet())
                .forEach(sound -> open.add(sounds.sparing(sound.kind(), planned())));
        List<PlannedReading> takes = new ArrayList<>();
        takes.add(PlannedReading.openEar(sounds.quiet(), 1));
        for (Stimulus sound : open.stream().sorted(Loudness::order).toList()) {
            if (field) {
                takes.add(PlannedReading.field(sound));
            }
            for (int take = 1; take <= OPEN_EAR_TAKES; take++) {
                takes.add(PlannedReading.openEar(sound, take));
            }
        }
        return takes;
    }

    private List<PlannedReading> inPlace() {
        quiet();
        List<PlannedReading> inPlace = new ArrayList<>();
        for (String fit : fits()) {
            List<Map.Entry<Group, Integer>> ofFit = insertions.entrySet().stream()
                    .filter(group -> fit(group.getKey()).equals(fit))
                    .sorted(Comparator.comparing(Map.Entry::getKey, SittingPlan::order))
                    .toList();
            int most = ofFit.stream().mapToInt(Map.Entry::getValue).max().orElse(0);
            for (int insertion = 1; insertion <= most; insertion++) {
                for (Map.Entry<Group, Integer> group : ofFit) {
                    if (insertion <= group.getValue()) {
                        inPlace.add(reading(group.getKey(), insertion));
                    }
                }
            }
        }
        return inPlace;
    }

    /** The background with the product in place, once a setting and fit. */
    private void quiet() {
        List<Group> groups = List.copyOf(insertions.keySet());
        groups.forEach(group -> insertions.putIfAbsent(new Group(group.conditions(), sounds.quiet()), 1));
    }

    private PlannedReading reading(Group group, int insertion) {
        SortedMap<String, String> own = new TreeMap<>(group.conditions());
        firmware().forEach((name, value) -> own.remove(name, value));
        return new PlannedReading(own, group.stimulus(), Optional.of(insertion), Optional.empty());
    }

    private static int order(Group a, Group b) {
        int bySound = Loudness.order(a.stimulus(), b.stimulus());
        return bySound != 0
                ? bySound
                : a.conditions().toString().compareTo(b.conditions().toString());
    }

    private SortedSet<String> fits() {
        SortedSet<String> fits = new TreeSet<>();
        insertions.keySet().forEach(group -> fits.add(fit(group)));
        return fits;
    }

    private static String fit(Group group) {
        return group.conditions().getOrDefault("fit", "");
    }

    private SortedSet<Band> bands() {
        SortedSet<Band> all = new TreeSet<>();
        like.ifPresent(session -> session.readings().stream()
                .filter(CurveReading::isInPlace)
                .forEach(reading -> all.addAll(reading.spectrum().bands())));
        if (all.isEmpty()) {
            int last = Band.nearest(resolution, LAST_BAND_HZ).index();
            for (int i = Band.nearest(resolution, FIRST_BAND_HZ).index(); i <= last; i++) {
                all.add(new Band(resolution, i));
            }
        }
        return Collections.unmodifiableSortedSet(all);
    }
}
