package org.ellwand.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.ellwand.acoustics.Band;
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
 * sessions, and nobody can say in which. A later take may be the other ear's ({@link SwappedTakes}), and the readings in place
 * ({@link SwappedInPlace}). Ears so alike that the errors of reading hide what tells them apart are left alone.
 * (Nearer at all, and nearer by 1.5 dB: common practice, no source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class EarSwap implements DataCheck {
    private static final double UNUSABLE_DB = 1.5;

    /** Two ears that differ by less are not told apart, dB (common practice, no source). */
    private static final double APART_DB = 1;

    /** Standard deviations of a reading that a difference of two shapes may come to. */
    private static final double SCATTER = 3;

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

    /** The part of a curve by which an ear is known, less its own mean. */
    static LevelCurve shape(LevelCurve curve) {
        LevelCurve part = Curves.between(curve, 1000, 8000);
        double mean = Curves.average(part);
        return part.changed(db -> db - mean);
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        List<Shape> all = new ArrayList<>();
        material.all().forEach(s -> all.addAll(shapes(s)));
        all.stream().filter(one -> one.session().equals(session.id())).forEach(one -> judge(tally, session, one, all));
        SwappedTakes.in(material, tally);
        SwappedInPlace.in(material, tally);
        return tally.done();
    }

    private static List<Shape> shapes(Session session) {
        List<Shape> shapes = new ArrayList<>();
        Sheets.grouped(Sheets.openEars(session), Sheets.REPEATS).forEach((conditions, takes) -> {
            LevelCurve curve = shape(Sheets.meanOf(takes));
            CurveReading first = takes.get(0);
            Owner.of(conditions)
                    .filter(owner -> curve.size() >= FEWEST_BANDS)
                    .ifPresent(owner -> shapes.add(new Shape(
                            session.id(),
                            owner.ear(),
                            owner.head(),
                            Levels.kind(session, first),
                            first.get("stimulus").orElse(""),
                            curve)));
        });
        return shapes;
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
        double apart = apartDb(session, one.curve().bands());
        if (distance(same, other) > apart && toOther < toSame) {
            double nearer = toSame - toOther;
            Consequence consequence = nearerDb().of(nearer).orElse(Consequence.NOTED);
            tally.add(
                    one.whose(),
                    List.of(),
                    Errs.EITHER,
                    consequence,
                    new Measure(nearer, nearerDb().passed(consequence), "dB"),
                    Remark.of("ears-swapped")
                            .with("sound", one.stimulus())
                            .with("same", toSame)
                            .with("other", toOther));
        }
    }

    /** What two ears must differ by to be told apart (root mean square over the bands). */
    static double apartDb(Session session, Collection<Band> bands) {
        double reading = bands.stream()
                .mapToDouble(b -> Sheets.readingDb(session, b))
                .average()
                .orElse(0);
        return Math.max(APART_DB, SCATTER * reading);
    }

    /** What follows where an ear lies nearer to the other one, by so many dB. */
    static Grade nearerDb() {
        return new Grade(0, UNUSABLE_DB);
    }

    private static double distance(LevelCurve one, LevelCurve other) {
        return Curves.rootMeanSquare(Curves.less(one, other));
    }
}
