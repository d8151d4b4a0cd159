package org.ellwand.audit;

import java.util.List;
import org.ellwand.quantity.Computation;

/**
 * How far every judged number moves with every number of every reading: ∂out[p]/∂level[r][b]. Exact for a linear
 * computation; for others the central difference at the unperturbed readings.
 */
final class Sensitivity {
    private static final double STEP_DB = 1e-3;
    private static final double CANCELLED = 1e-8;

    private final double[][][] byReading;
    private final int points;

    private Sensitivity(double[][][] byReading, int points) {
        this.byReading = byReading;
        this.points = points;
    }

    /**
     * Sensitivities to some of the readings.
     *
     * @param levelsDb unperturbed levels of all readings; used as scratch and restored
     */
    static Sensitivity of(Computation computation, double[][] levelsDb, List<Integer> readings) {
        double[][][] byReading = new double[levelsDb.length][][];
        double step = computation.isLinear() ? 1 : STEP_DB;
        double[] up = new double[computation.size()];
        double[] down = new double[computation.size()];
        for (int r : readings) {
            byReading[r] = new double[levelsDb[r].length][computation.size()];
            for (int b = 0; b < levelsDb[r].length; b++) {
                double level = levelsDb[r][b];
                levelsDb[r][b] = level + step;
                computation.compute(levelsDb, up);
                levelsDb[r][b] = level - step;
                computation.compute(levelsDb, down);
                levelsDb[r][b] = level;
                for (int p = 0; p < up.length; p++) {
                    byReading[r][b][p] = (up[p] - down[p]) / (2 * step);
                }
            }
        }
        return new Sensitivity(byReading, computation.size());
    }

    /** Sensitivity of a point to one number; 0 where the reading is not concerned. */
    double at(int reading, int band, int point) {
        return byReading[reading] == null ? 0 : byReading[reading][band][point];
    }

    int points() {
        return points;
    }

    /** What one standard deviation of a factor adds to a point. */
    double effect(Factor factor, int point) {
        double sum = 0;
        double largest = 0;
        for (Factor.Entry entry : factor.entries()) {
            double one = entry.sizeDb() * at(entry.reading(), entry.band(), point);
            sum += one;
            largest = Math.max(largest, Math.abs(one));
        }
        // What cancels leaves rounding behind; it is nothing.
        return Math.abs(sum) < CANCELLED * largest ? 0 : sum;
    }
}
