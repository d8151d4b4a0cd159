package org.ellwand.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Weighting;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.pairing.OpenEars;
import org.ellwand.words.Remark;

/**
 * What a product makes itself, taken for sound that it passes, and the other way round. With the sound off, the room reaches the
 * eardrum through the product, and the probe adds its own floor: together no more than the open ear reads in quiet, raised in the bands
 * that the product amplifies by its gain under the softest sound. What reads above that is the product's own noise: nothing else came on top. Where a sound lies less
 * than 10 dB above that noise, gain and attenuation are limited by it. Where, in quiet, the product in place lies within 3 dB of
 * that in half of the bands or more, room and probe may be all that was read, and its own noise is at most what was read. It is at least what
 * is left when the energy of room and probe is taken off, 10 lg(1 − 10^(−d/10)) lower where d dB stand above them, and nothing where none do: a
 * claim of little noise fails only by what is left.
 *
 * <p>The noise hides attenuation, and flatters a gain. What is near it is corrected, widened or bounded like any background ({@link
 * BackgroundFloor}); this check says whose it is. (10 and 3 dB: common practice, no source.) The last
 * finding says what the readings can tell and accuses nobody of a fault: what makes no noise, as a plug without electronics, has it always, and a
 * noise of 5 dB or more above room and probe in fewer than 1 in 1000 sessions. It is told where a claim is about noise.
 */
final class OwnNoise implements DataCheck {
    /** Of a product whose noise the readings cannot tell from the room's. */
    static final String NOT_TOLD_APART = "noise-not-told-apart";

    /** Of a product under a sound that is hardly louder than its noise. */
    static final String LIMITED = "noise-limited";

    private static final String IN_NOISE = "equivalent input noise";
    private static final double LIMITED_DB = 10;
    private static final double TOLD_APART_DB = 3;
    private static final Set<String> STATE = Set.of("insertion", "take", "stimulus");

    @Override
    public String name() {
        return "own noise";
    }

    @Override
    public String needs() {
        return "the product in place and the open ear in quiet";
    }

    /** Whether a claim is about what a product reads in quiet: no other one asks whose noise that is. */
    static boolean isAskedBy(List<Product> products) {
        return products.stream()
                .flatMap(product -> product.claims().stream())
                .flatMap(claim -> Stream.concat(claim.rule().stream(), claim.otherwise().stream()))
                .anyMatch(rule -> rule.quantity().equals(IN_NOISE)
                        || rule.stimulus().filter("quiet"::equals).isPresent());
    }

    /** A product in quiet, held against the open ear. */
    private record Silence(Conditions of, double ownDb, double aboveDb, List<Band> near, List<Band> apart) {
        boolean isNotToldApart() {
            return near.size() >= apart.size() && aboveDb < TOLD_APART_DB;
        }
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        List<CurveReading> inQuiet = Sheets.levels(session, r -> r.isInPlace() && Sheets.isQuiet(session, r));
        if (inQuiet.isEmpty()) {
            return tally.done();
        }
        OpenEars ears = OpenEars.in(session);
        Map<Conditions, LevelCurve> gains = gains(session, material.attenuationsAsRead());
        List<Silence> silences = new ArrayList<>();
        Sheets.grouped(inQuiet, Sheets.REPEATS)
                .forEach((of, quiet) -> silence(ears, of, quiet, gains).ifPresent(silence -> {
                    tally.looked();
                    silences.add(silence);
                    limited(tally, session, of, Sheets.meanOf(quiet), silence.apart());
                }));
        List<Silence> alike = silences.stream().filter(Silence::isNotToldApart).toList();
        if (alike.size() == silences.size() && !alike.isEmpty()) {
            add(tally, common(alike), alike.get(0));
        } else {
            alike.forEach(silence -> add(tally, silence.of(), silence));
        }
        return tally.done();
    }

    /** By state of the product: what it amplifies of the softest sound it was read under. */
    private static Map<Conditions, LevelCurve> gains(Session session, Attenuations attenuations) {
        Map<Conditions, LevelCurve> gains = new TreeMap<>(Comparator.comparing(Conditions::toString));
        Sheets.grouped(Sheets.inPlace(session), STATE).forEach((state, readings) -> {
            double softest = readings.stream()
                    .mapToDouble(r -> Levels.db(session, r))
                    .min()
                    .orElse(0);
            List<LevelCurve> some = readings.stream()
                    .filter(r -> Levels.db(session, r) == softest)
                    .flatMap(r -> attenuations.of(r).stream())
                    .toList();
            if (!some.isEmpty()) {
                gains.put(state, Curves.mean(some).changed(attenuation -> Math.max(0, -attenuation)));
            }
        });
        return gains;
    }

    private static Optional<Silence> silence(
            OpenEars ears, Conditions of, List<CurveReading> quiet, Map<Conditions, LevelCurve> gains) {
        LevelCurve own = Sheets.meanOf(quiet);
        LevelCurve room = ears.of(quiet.get(0))
                .map(p -> Sheets.meanOf(p.takes().stream().map(CurveReading::of).toList()))
                .orElse(LevelCurve.EMPTY);
        LevelCurve gain = gains.getOrDefault(of.without(Set.of("stimulus")), LevelCurve.EMPTY);
        LevelCurve around = room.changed((band, level) -> level + gain.levelOr(band, 0.0));
        LevelCurve above = Curves.less(own, around);
        if (above.isEmpty()) {
            return Optional.empty();
        }
        List<Band> near = above.bands().stream()
                .filter(b -> above.levelOr(b, 0.0) < TOLD_APART_DB)
                .toList();
        List<Band> apart = new ArrayList<>(above.bands());
        apart.removeAll(near);
        double ownDb = Curves.overallDb(own, Weighting.A);
        return Optional.of(new Silence(of, ownDb, ownDb - Curves.overallDb(around, Weighting.A), near, apart));
    }

    /** What the readings have in common: one finding serves for all. */
    private static Conditions common(List<Silence> silences) {
        Conditions first = silences.get(0).of();
        Set<String> differing = new TreeSet<>();
        first.values()
                .forEach((name, value) -> silences.stream()
                        .filter(s -> !s.of().get(name).equals(Optional.of(value)))
                        .forEach(s -> differing.add(name)));
        return first.without(differing);
    }

    private static void add(Tally tally, Conditions of, Silence silence) {
        tally.add(
                of,
                silence.near(),
                Errs.HIDES_ATTENUATION,
                Consequence.BOUNDED,
                new Measure(silence.aboveDb(), TOLD_APART_DB, "dB"),
                Remark.of(NOT_TOLD_APART)
                        .with("own", silence.ownDb())
                        .with("above", silence.aboveDb())
                        .with("threshold", TOLD_APART_DB));
    }

    private static void limited(Tally tally, Session session, Conditions of, LevelCurve own, List<Band> apart) {
        Conditions state = of.without(Set.of("stimulus"));
        Sheets.grouped(Sheets.inPlace(session), Sheets.REPEATS).forEach((sounding, readings) -> {
            if (!sounding.without(Set.of("stimulus")).equals(state)) {
                return;
            }
            LevelCurve above = Curves.less(Sheets.meanOf(readings), own);
            List<Band> limited = apart.stream()
                    .filter(b -> above.levelOr(b, LIMITED_DB) < LIMITED_DB)
                    .toList();
            if (!limited.isEmpty()) {
                double least = limited.stream()
                        .mapToDouble(b -> above.levelOr(b, LIMITED_DB))
                        .min()
                        .orElse(LIMITED_DB);
                boolean bounded = least < BackgroundFloor.LOWEST_DB;
                tally.add(
                        sounding,
                        limited,
                        Errs.HIDES_ATTENUATION,
                        bounded ? Consequence.BOUNDED : Consequence.WIDENED,
                        new Measure(least, LIMITED_DB, "dB"),
                        Remark.of(LIMITED).with("above", least).with("threshold", LIMITED_DB));
            }
        });
    }
}
