package org.ellwand.audit;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether repeats scatter more than declared sizes explain: Σ (x_i − x̄)² / σ_i² about the weighted mean, against χ² of n − 1
 * degrees of freedom, 1 % shared out over the points of a claim.
 */
final class ScatterTest {
    private static final double TEST_LEVEL = 0.01;

    private final int claimPoints;
    private final Map<Integer, Double> criticalSquares = new HashMap<>();

    /** @param claimPoints over all subjects, at least one */
    ScatterTest(int claimPoints) {
        this.claimPoints = claimPoints;
    }

    /**
     * Whether they scatter more.
     *
     * @param variance declared, by repeat and point
     * @param x numbers by repeat and point
     * @param p the point
     */
    boolean exceeds(double[][] variance, double[][] x, int p) {
        return weightedSquares(variance, x, p) > criticalSquare(x.length - 1);
    }

    private static double weightedSquares(double[][] variance, double[][] x, int p) {
        double weights = 0;
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            if (variance[i][p] == 0) {
                return IntStream.range(0, x.length).allMatch(j -> x[j][p] == x[0][p]) ? 0 : Double.POSITIVE_INFINITY;
            }
            weights += 1 / variance[i][p];
            sum += x[i][p] / variance[i][p];
        }
        double mean = sum / weights;
        double squares = 0;
        for (int i = 0; i < x.length; i++) {
            squares += (x[i][p] - mean) * (x[i][p] - mean) / variance[i][p];
        }
        return squares;
    }

    /** Below it a sum of squares is no surprise. */
    private double criticalSquare(int degreesOfFreedom) {
        return criticalSquares.computeIfAbsent(
                degreesOfFreedom,
                nu -> ChiSquaredDistribution.of(nu).inverseSurvivalProbability(TEST_LEVEL / claimPoints));
    }
}
