package org.ellwand.audit;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.ReadingIndex;

/** An undeclared reading cause, taken from repeated takes of an open ear, for the readings in place too. */
final class OpenEarScatter {
    private final ReadingIndex index;
    private final double[][] levelsDb;
    private final Subject subject;
    private final List<BitSet> covered;
    private final Supplier<Sensitivity> sensitivity;

    /** @param covered by point, the readings whose errors are in other scatter already */
    OpenEarScatter(
            ReadingIndex index,
            double[][] levelsDb,
            Subject subject,
            List<BitSet> covered,
            Supplier<Sensitivity> sensitivity) {
        this.index = index;
        this.levelsDb = levelsDb;
        this.subject = subject;
        this.covered = covered;
        this.sensitivity = sensitivity;
    }

    /** Two takes or more of one open ear. */
    record Takes(Session session, List<Reading> readings) {}

    /** The open ears of a subject that tell something nobody declared. */
    static List<Takes> takes(Subject subject) {
        return subject.cells().stream()
                .filter(c -> !Surroundings.declares(c, SharedBy.READING))
                .map(c -> new Takes(c.session(), c.openEar()))
                .filter(t -> t.readings().size() >= 2)
                .distinct()
                .toList();
    }

    /** What their scatter does to every point. */
    Group of(Takes open) {
        List<Integer> takes = open.readings().stream().map(index::of).toList();
        int m = takes.size();
        List<Integer> others = subject.cells().stream()
                .filter(c -> c.openEar().equals(open.readings()))
                .flatMap(c -> c.insertions().stream())
                .flatMap(i -> i.takes().stream())
                .map(index::of)
                .distinct()
                .toList();
        double[][] effects = new double[covered.size()][m * (1 + others.size())];
        TakeDeviations errors = new TakeDeviations(index, levelsDb);
        List<Map<Double, Double>> deviations = errors.of(takes);
        for (int t = 0; t < m; t++) {
            for (int r : takes) {
                add(effects, t, deviations.get(t), r, 1 / Math.sqrt((double) m * (m - 1)));
            }
            for (int o = 0; o < others.size(); o++) {
                add(
                        effects,
                        m * (1 + o) + t,
                        errors.grown(deviations.get(t), others.get(o)),
                        others.get(o),
                        1 / Math.sqrt(m - 1.0));
            }
        }
        return new Group("open ear|" + open.readings().get(0).conditions(), m - 1, effects);
    }

    /** What one take's deviation does to every point, were it the error of a reading; less where it is in already. */
    private void add(double[][] effects, int column, Map<Double, Double> deviation, int reading, double scale) {
        for (int b = 0; b < levelsDb[reading].length; b++) {
            double error = scale * deviation.getOrDefault(index.at(reading).nominalHz(b), 0.0);
            for (int p = 0; p < effects.length; p++) {
                if (!covered.get(p).get(reading)) {
                    effects[p][column] += error * sensitivity.get().at(reading, b, p);
                }
            }
        }
    }
}
