package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A product that was not read in quiet, so near to what the open ear reads in quiet that room and probe may be most of its level.
 * How much the product takes off the room is not known, so nothing is subtracted, and the level enters as it was read. But it is
 * the most that it can be: less than 6 dB above the room ({@link BackgroundFloor}) it supports a claim, and refutes none.
 *
 * <p>It hides attenuation. A product that was read in quiet is held against that reading instead, with the room in it.
 */
final class RoomNoise implements DataCheck {
    /** Of a level that may be the room's. */
    static final String NOT_TOLD_APART = "room-not-told-apart";

    private static final Set<String> FREE = Set.of("device", "stimulus", "insertion", "take");

    @Override
    public String name() {
        return "room noise";
    }

    @Override
    public String needs() {
        return "the open ear in quiet, and a product that was not read in quiet";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        List<CurveReading> quiet = BackgroundFloor.quiet(session);
        List<CurveReading> alone = quiet.isEmpty() ? List.of() : alone(session, quiet);
        Sheets.grouped(alone, Sheets.REPEATS).forEach((of, readings) -> {
            LevelCurve room = room(quiet, of);
            LevelCurve above = Curves.less(Sheets.meanOf(readings), room);
            if (!above.isEmpty()) {
                tally.looked();
                add(tally, of, above);
            }
        });
        return tally.done();
    }

    /** Products under a sound of which no reading in quiet tells their background. */
    private static List<CurveReading> alone(Session session, List<CurveReading> quiet) {
        return Sheets.inPlace(session).stream()
                .filter(r -> BackgroundFloor.quiet(session, quiet, r).isEmpty())
                .toList();
    }

    /** What the same ear reads in quiet without the product; empty where it was not read. */
    private static LevelCurve room(List<CurveReading> quiet, Conditions of) {
        Map<String, String> there = of.values();
        List<CurveReading> open = quiet.stream()
                .filter(CurveReading::isOpenEar)
                .filter(r -> r.conditions().values().entrySet().stream()
                        .allMatch(one ->
                                FREE.contains(one.getKey()) || one.getValue().equals(there.get(one.getKey()))))
                .toList();
        return open.isEmpty() ? LevelCurve.EMPTY : Sheets.meanOf(open);
    }

    private static void add(Tally tally, Conditions of, LevelCurve above) {
        List<Band> near = new ArrayList<>(above.bands());
        near.removeIf(band -> above.levelOr(band, BackgroundFloor.LOWEST_DB) >= BackgroundFloor.LOWEST_DB);
        near.stream()
                .mapToDouble(band -> above.levelOr(band, BackgroundFloor.LOWEST_DB))
                .min()
                .ifPresent(least -> tally.add(
                        of,
                        near,
                        Errs.HIDES_ATTENUATION,
                        Consequence.BOUNDED,
                        new Measure(least, BackgroundFloor.LOWEST_DB, "dB"),
                        Remark.of(NOT_TOLD_APART).with("above", least).with("threshold", BackgroundFloor.LOWEST_DB)));
    }
}
