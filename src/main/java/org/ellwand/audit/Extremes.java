package org.ellwand.audit;

import java.util.Arrays;
import org.ellwand.claim.Statistic;

/** The statistic of a curve that is read off its ordered bands, and what noise adds to it on average. */
final class Extremes {
    private static final int BLOCK = 1000;
    private static final int MOST_TRIALS = 5_000;

    private Extremes() {}

    static boolean isExtreme(Statistic statistic) {
        return switch (statistic) {
            case LOWEST, HIGHEST, SPREAD, MEDIAN -> true;
            case EVERY_BAND, MEAN, SLOPE, OVERALL -> false;
        };
    }

    /** The lower median of an even number. */
    static double of(Statistic statistic, double[] curve) {
        double[] sorted = curve.clone();
        Arrays.sort(sorted);
        int last = sorted.length - 1;
        return switch (statistic) {
            case LOWEST -> sorted[0];
            case HIGHEST -> sorted[last];
            case SPREAD -> sorted[last] - sorted[0];
            case MEDIAN -> sorted[last / 2];
            case EVERY_BAND, MEAN, SLOPE, OVERALL -> throw new IllegalArgumentException(statistic + " is no extreme");
        };
    }

    /** Mean of the statistic over joint draws of the curve, less the statistic of the curve itself. */
    static double correction(Statistic statistic, Estimates curve, int trials) {
        int wanted = Math.min(trials, MOST_TRIALS);
        Draws draws = new Draws(curve, BLOCK);
        double[][] errors = new double[curve.size()][BLOCK];
        double[] drawn = new double[curve.size()];
        double sum = 0;
        for (int start = 0; start < wanted; start += BLOCK) {
            int count = Math.min(BLOCK, wanted - start);
            draws.next(errors, count);
            for (int t = 0; t < count; t++) {
                for (int p = 0; p < drawn.length; p++) {
                    drawn[p] = curve.value[p] + errors[p][t];
                }
                sum += of(statistic, drawn);
            }
        }
        return sum / wanted - of(statistic, curve.value);
    }
}
