package org.ellwand.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Readings in place of one ear under the name of the other. What tells two open ears apart is there under a plug as well: in place
 * the left ear differs from the right one by what it does open, D, and by what the fits differ by; swapped, by −D and the fits. Where in every
 * setting and under every sound it lies nearer to −D than half of D, the fits would have to undo the ears and then turn them round, to a
 * quarter: the readings were swapped. Fits that differ more than ears hide it. (2 dB and one half: common practice, no source.)
 */
final class SwappedInPlace {
    /** Two open ears that differ by less (root mean square over the bands) are not looked at, dB. */
    private static final double APART_DB = 2;

    private static final double SHARE = 0.5;
    private static final int FEWEST_BANDS = 4;
    private static final Set<String> OWN =
            Set.of("ear", "head", "side", "unit", "session", "insertion", "take", "stimulus");

    private SwappedInPlace() {}

    /** How far apart the open ears are, and how far the ears in place from their difference turned round; the worst of several. */
    private record Gap(double apartDb, double offDb) {
        boolean isTurned() {
            return offDb < SHARE * apartDb;
        }

        Gap or(Gap other) {
            return other.offDb / other.apartDb > offDb / apartDb ? other : this;
        }
    }

    static void in(Material material, Tally tally) {
        Session session = material.session();
        Map<Conditions, Gap> gaps = new LinkedHashMap<>();
        for (Session other : material.all()) {
            if (hasBeside(session, other)) {
                compare(material, other, gaps);
            }
        }
        gaps.forEach((ear, gap) -> {
            tally.looked();
            if (gap.isTurned()) {
                add(tally, ear, gap);
            }
        });
    }

    /** Whether a session has an ear beside one of this: of a lot on one simulator there is none. */
    private static boolean hasBeside(Session session, Session other) {
        List<Owner> here = owners(session);
        return owners(other).stream().anyMatch(there -> here.stream().anyMatch(there::isBeside));
    }

    private static List<Owner> owners(Session session) {
        return Sheets.openEars(session).stream()
                .flatMap(r -> Owner.of(r.conditions()).stream())
                .distinct()
                .toList();
    }

    private static void compare(Material material, Session other, Map<Conditions, Gap> gaps) {
        Session session = material.session();
        Map<Conditions, List<CurveReading>> there = Sheets.grouped(Sheets.inPlace(other), Sheets.REPEATS);
        material.repeats()
                .forEach((of, readings) -> Owner.of(of)
                        .ifPresent(owner -> there.forEach((ofOther, others) -> {
                            boolean beside =
                                    Owner.of(ofOther).filter(owner::isBeside).isPresent();
                            if (beside && isAlike(session, of, other, ofOther)) {
                                LevelCurve open = Curves.less(open(session, of), open(other, ofOther));
                                LevelCurve inPlace = Curves.less(Sheets.meanOf(readings), Sheets.meanOf(others));
                                add(gaps, owner.ear(), EarSwap.shape(open), EarSwap.shape(inPlace));
                            }
                        })));
    }

    private static boolean isAlike(Session session, Conditions of, Session other, Conditions ofOther) {
        return of.without(OWN).equals(ofOther.without(OWN)) && Levels.isSameSound(session, of, other, ofOther);
    }

    /** The open ear of a state under its sound. */
    private static LevelCurve open(Session session, Conditions of) {
        List<CurveReading> takes = Sheets.openEars(session).stream()
                .filter(r -> r.get("stimulus").equals(of.get("stimulus")))
                .filter(r -> Owner.of(r.conditions()).equals(Owner.of(of)))
                .toList();
        return takes.isEmpty() ? LevelCurve.EMPTY : Sheets.meanOf(takes);
    }

    private static void add(Map<Conditions, Gap> gaps, Conditions ear, LevelCurve open, LevelCurve inPlace) {
        LevelCurve off = Curves.less(inPlace, open.negated());
        double apart = Curves.rootMeanSquare(open);
        if (off.size() >= FEWEST_BANDS && apart > APART_DB) {
            gaps.merge(ear, new Gap(apart, Curves.rootMeanSquare(off)), Gap::or);
        }
    }

    private static void add(Tally tally, Conditions ear, Gap gap) {
        tally.add(
                ear,
                List.of(),
                Errs.EITHER,
                Consequence.UNUSABLE,
                new Measure(gap.offDb(), SHARE * gap.apartDb(), "dB"),
                Remark.of("ears-in-place-swapped").with("off", gap.offDb()).with("apart", gap.apartDb()));
    }
}
