package org.ellwand.audit;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.quantity.Computation;

/**
 * How far every judged number moves with every number of every reading: ∂out[p]/∂level[r][b]. Exact for a linear
 * computation, in closed form where it gives one; for others the central difference at the unperturbed readings.
 */
final class Sensitivity {
    private static final double STEP_DB = 1e-3;
    private static final double[] UNMOVED = {};
    private static final double CANCELLED = 1e-8;

    /** Of more readings than this, the parts that a number is the sum of are moved one by one. */
    private static final int MANY = 100;

    private final Map<Integer, double[][]> byReading = new HashMap<>();
    private final double[][] levelsDb;
    private final int points;

    private Sensitivity(double[][] levelsDb, int points) {
        this.levelsDb = levelsDb;
        this.points = points;
    }

    /**
     * Sensitivities to some of the readings.
     *
     * @param levelsDb unperturbed levels of all readings; used as scratch and restored
     */
    static Sensitivity of(Computation computation, double[][] levelsDb, List<Integer> readings) {
        Sensitivity sensitivity = new Sensitivity(levelsDb, computation.size());
        if (computation.addSlopes(1, sensitivity::add)) {
            return sensitivity;
        }
        if (readings.size() <= MANY) {
            sensitivity.add(computation, 1, readings);
        } else {
            for (Computation.Addend addend : computation.addends()) {
                List<Integer> own = addend.of().readings();
                sensitivity.add(addend.of(), addend.factor(), own.isEmpty() ? readings : own);
            }
        }
        return sensitivity;
    }

    private void add(int reading, int band, int point, double slope) {
        double[] row = row(reading, band);
        row[point] = left(row[point] + slope, Math.abs(slope));
    }

    /** The slopes of all points with a level; made where something is added to it. */
    private double[] row(int reading, int band) {
        double[][] known = byReading.get(reading);
        double[][] rows = known != null ? known : byReading.computeIfAbsent(reading, r -> unmoved(levelsDb[r].length));
        if (rows[band].length == 0) {
            rows[band] = new double[points];
        }
        return rows[band];
    }

    private static double[][] unmoved(int bands) {
        double[][] rows = new double[bands][];
        Arrays.fill(rows, UNMOVED);
        return rows;
    }

    private void add(Computation computation, double factor, List<Integer> readings) {
        double step = computation.isLinear() ? 1 : STEP_DB;
        double[] up = new double[points];
        double[] down = new double[points];
        for (int r : readings) {
            for (int b = 0; b < levelsDb[r].length; b++) {
                double level = levelsDb[r][b];
                levelsDb[r][b] = level + step;
                computation.compute(levelsDb, up);
                levelsDb[r][b] = level - step;
                computation.compute(levelsDb, down);
                levelsDb[r][b] = level;
                double[] row = row(r, b);
                for (int p = 0; p < points; p++) {
                    row[p] += factor * ((up[p] - down[p]) / (2 * step));
                }
            }
        }
    }

    /** Sensitivity of a point to one number; 0 where the reading is not concerned. */
    double at(int reading, int band, int point) {
        double[][] found = byReading.get(reading);
        return found == null || found[band].length == 0 ? 0 : found[band][point];
    }

    int points() {
        return points;
    }

    /** What one standard deviation of a factor adds to every point. */
    double[] effects(Factor factor) {
        double[] sum = new double[points];
        double[] largest = new double[points];
        Entries entries = factor.entries();
        for (int e = 0; e < entries.size(); e++) {
            double[][] found = byReading.get(entries.reading(e));
            if (found != null) {
                double[] sensitivity = found[entries.band(e)];
                double sizeDb = entries.sizeDb(e);
                for (int p = 0; p < sensitivity.length; p++) {
                    double one = sizeDb * sensitivity[p];
                    sum[p] += one;
                    largest[p] = Math.max(largest[p], Math.abs(one));
                }
            }
        }
        for (int p = 0; p < points; p++) {
            sum[p] = left(sum[p], largest[p]);
        }
        return sum;
    }

    /** What cancels leaves rounding behind; it is nothing. */
    private static double left(double sum, double largest) {
        return Math.abs(sum) < CANCELLED * largest ? 0 : sum;
    }
}
