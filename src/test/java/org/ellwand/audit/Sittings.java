package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;

/**
 * Invented sittings with noise that depends on a name alone: third octaves from 100 Hz to 10 kHz, 80 dB at the open ear
 * and 60 dB under flood, 68 dB under ebb.
 *
 * @param declared whether the session declares its causes; else only repeats tell
 */
record Sittings(boolean declared, int insertions, int takes, double insertionDb, double readingDb) {
    static final int BANDS = 21;
    static final double FIRST_HZ = 100;

    private record Row(String conditions, double[] levelsDb) {}

    Session session(String id, String noise) {
        return session(id, noise, 0, false);
    }

    /**
     * A session.
     *
     * @param raisedDb added to every level
     * @param reversed whether the readings stand in the opposite order
     */
    Session session(String id, String noise, double raisedDb, boolean reversed) {
        Bench bench = new Bench(id, Resolution.THIRD_OCTAVE);
        if (declared) {
            bench.cause("calibration", 0.5, SharedBy.SESSION, false)
                    .cause("insertion", insertionDb, SharedBy.INSERTION, false)
                    .cause("reading", readingDb, SharedBy.READING, true);
        }
        List<Row> rows = rows(new NormalStream(Seeds.of("sitting", noise)), raisedDb);
        if (reversed) {
            Collections.reverse(rows);
        }
        rows.forEach(row -> bench.reading(row.conditions(), FIRST_HZ, row.levelsDb()));
        return bench.session();
    }

    private List<Row> rows(NormalStream draw, double raisedDb) {
        List<Row> rows = new ArrayList<>();
        for (int t = 1; t <= takes; t++) {
            rows.add(new Row("device=open ear, stimulus=n94, take=" + t, levels(80 + raisedDb, draw)));
        }
        for (int i = 1; i <= insertions; i++) {
            double insertion = insertionDb * draw.next();
            String of = ", stimulus=n94, insertion=" + i;
            rows.add(new Row("device=Skerry, setting=flood" + of, levels(60 + insertion + raisedDb, draw)));
            rows.add(new Row("device=Skerry, setting=ebb" + of, levels(68 + insertion + raisedDb, draw)));
        }
        return rows;
    }

    private double[] levels(double levelDb, NormalStream draw) {
        double[] levels = new double[BANDS];
        for (int b = 0; b < BANDS; b++) {
            levels[b] = levelDb + readingDb * draw.next();
        }
        return levels;
    }
}
