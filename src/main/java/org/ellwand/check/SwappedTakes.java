package org.ellwand.check;

import java.util.List;
import java.util.Optional;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A later take of an open ear that is the other ear's: its shape from 1 to 8 kHz is that of the first take of the other ear under the same
 * sound, as near as readings repeat, and not that of its own first take. A tube that moved changes the shape too, and
 * hardly into that of the other ear.
 */
final class SwappedTakes {
    /** In findings. */
    static final String KEY = "ears-swapped-in-take";

    private SwappedTakes() {}

    static void in(Material material, Tally tally) {
        Session session = material.session();
        Sheets.grouped(Sheets.openEars(session), Sheets.REPEATS).forEach((of, takes) -> {
            Optional<CurveReading> beside = takes.size() < 2 ? Optional.empty() : beside(material.all(), session, of);
            beside.ifPresent(other ->
                    takes.subList(1, takes.size()).forEach(take -> judge(tally, session, takes.get(0), take, other)));
        });
    }

    /** The first take of the other ear of the same head under the same sound. */
    private static Optional<CurveReading> beside(List<Session> all, Session session, Conditions of) {
        return Owner.of(of)
                .flatMap(owner -> all.stream()
                        .flatMap(other -> Sheets.openEars(other).stream()
                                .filter(r -> Levels.isSameSound(session, of, other, r.conditions()))
                                .filter(r -> Owner.of(r.conditions())
                                        .filter(owner::isBeside)
                                        .isPresent()))
                        .findFirst());
    }

    private static void judge(Tally tally, Session session, CurveReading first, CurveReading take, CurveReading other) {
        tally.looked();
        LevelCurve shape = EarSwap.shape(Sheets.curve(take));
        double toSame = away(shape, first);
        double toOther = away(shape, other);
        if (toOther < EarSwap.apartDb(session, shape.bands())
                && away(EarSwap.shape(Sheets.curve(first)), other) > EarSwap.apartDb(session, shape.bands())) {
            double nearer = toSame - toOther;
            Optional<Consequence> consequence = EarSwap.nearerDb().of(nearer);
            consequence.ifPresent(follows -> tally.add(
                    take.conditions(),
                    List.of(),
                    Errs.EITHER,
                    follows,
                    new Measure(nearer, EarSwap.nearerDb().passed(follows), "dB"),
                    Remark.of(KEY)
                            .with(
                                    "take",
                                    take.get("take")
                                            .or(() -> take.get("insertion"))
                                            .orElse("1"))
                            .with("sound", take.get("stimulus").orElse(""))
                            .with("same", toSame)
                            .with("other", toOther)));
        }
    }

    private static double away(LevelCurve shape, CurveReading from) {
        return Curves.rootMeanSquare(Curves.less(shape, EarSwap.shape(Sheets.curve(from))));
    }
}
