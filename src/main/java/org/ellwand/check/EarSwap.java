package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Left taken for right. An open ear has a shape of its own, by which it is known again: from 1 to 8 kHz an ear lies nearer to
 * what it was itself, under other sounds and in other sessions, than to the other ear of the same head (root mean square over
 * the bands, each curve less its own mean). Where it lies nearer to the other one, the two were swapped in one of the
 * sessions, and nobody can say in which. Ears so alike that the errors of reading hide what tells them apart are left alone.
 * (Nearer at all, and nearer by 1.5 dB: common practice, no source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class EarSwap implements DataCheck {
    private static final double UNUSABLE_DB = 1.5;

    /** Two ears that differ by less are not told apart, dB (common practice, no source). */
    private static final double APART_DB = 1;

    /** Standard deviations of a reading that a difference of two shapes may come to. */
    private static final double SCATTER = 3;

    private static final Set<String> WHOSE = Set.of("ear", "head", "side");
    private static final int FEWEST_BANDS = 4;

    @Override
    public String name() {
        return "left and right";
    }

    @Override
    public String needs() {
        return "the open ears of both sides of a head, twice under one kind of sound";
    }

    /** The shape of an open ear under one sound. */
    private record Shape(
            String session, Conditions whose, String head, String kind, String stimulus, LevelCurve curve) {
        boolean isSameEar(Shape other) {
            return whose.equals(other.whose);
        }
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        List<Shape> all = new ArrayList<>();
        material.all().forEach(s -> all.addAll(shapes(s)));
        all.stream().filter(one -> one.session().equals(session.id())).forEach(one -> judge(tally, session, one, all));
        return tally.done();
    }

    private static List<Shape> shapes(Session session) {
        List<Shape> shapes = new ArrayList<>();
        Sheets.grouped(Sheets.openEars(session), Sheets.REPEATS).forEach((conditions, takes) -> {
            LevelCurve levels = Curves.between(Sheets.meanOf(takes), 1000, 8000);
            double mean = Curves.average(levels);
            LevelCurve curve = levels.changed(db -> db - mean);
            Conditions whose = whose(conditions);
            CurveReading first = takes.get(0);
            head(whose)
                    .filter(h -> curve.size() >= FEWEST_BANDS)
                    .ifPresent(head -> shapes.add(new Shape(
                            session.id(),
                            whose,
                            head,
                            Levels.kind(session, first),
                            first.get("stimulus").orElse(""),
                            curve)));
        });
        return shapes;
    }

    private static Conditions whose(Conditions conditions) {
        Conditions whose = Conditions.of(Map.of());
        for (String name : WHOSE) {
            Optional<String> value = conditions.get(name);
            if (value.isPresent()) {
                whose = whose.with(name, value.get());
            }
        }
        return whose;
    }

    /** Where no head is named, the ear's name without its side; empty where that tells nothing. */
    private static Optional<String> head(Conditions whose) {
        String ear = whose.get("ear").orElse("");
        String bare = ear.toLowerCase(Locale.ROOT).replaceAll("\\b(left|right|l|r)\\b", "");
        boolean told = whose.get("side").isPresent() || bare.length() < ear.length();
        return whose.get("head").or(() -> told ? Optional.of(bare) : Optional.empty());
    }

    private static void judge(Tally tally, Session session, Shape one, List<Shape> all) {
        List<Shape> alike = all.stream()
                .filter(s -> !s.equals(one)
                        && s.kind().equals(one.kind())
                        && s.head().equals(one.head()))
                .toList();
        List<Shape> elsewhere =
                alike.stream().filter(s -> !s.session().equals(one.session())).toList();
        boolean bothElsewhere = elsewhere.stream().anyMatch(s -> s.isSameEar(one))
                && elsewhere.stream().anyMatch(s -> !s.isSameEar(one));
        List<Shape> others = bothElsewhere
                ? elsewhere
                : alike.stream()
                        .filter(s -> !s.stimulus().equals(one.stimulus()))
                        .toList();
        List<LevelCurve> same =
                others.stream().filter(s -> s.isSameEar(one)).map(Shape::curve).toList();
        List<LevelCurve> other =
                others.stream().filter(s -> !s.isSameEar(one)).map(Shape::curve).toList();
        if (!same.isEmpty() && !other.isEmpty()) {
            tally.looked();
            compare(tally, session, one, Curves.mean(same), Curves.mean(other));
        }
    }

    private static void compare(Tally tally, Session session, Shape one, LevelCurve same, LevelCurve other) {
        double toSame = distance(one.curve(), same);
        double toOther = distance(one.curve(), other);
        double apart = Math.max(
                APART_DB,
                SCATTER
                        * one.curve().bands().stream()
                                .mapToDouble(b -> Sheets.readingDb(session, b))
                                .average()
                                .orElse(0));
        if (distance(same, other) > apart && toOther < toSame) {
            double nearer = toSame - toOther;
            boolean far = nearer > UNUSABLE_DB;
            tally.add(
                    one.whose(),
                    List.of(),
                    Errs.EITHER,
                    far ? Consequence.UNUSABLE : Consequence.NOTED,
                    new Measure(nearer, far ? UNUSABLE_DB : 0, "dB"),
                    Remark.of("ears-swapped")
                            .with("sound", one.stimulus())
                            .with("same", toSame)
                            .with("other", toOther));
        }
    }

    private static double distance(LevelCurve one, LevelCurve other) {
        return Curves.rootMeanSquare(Curves.less(one, other));
    }
}
