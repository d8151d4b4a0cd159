package org.ellwand.audit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.Scatter;

/**
 * The mean over some people or units held against the mean over others. The error is the sum of two scaled t, one for the
 * scatter of either side (JCGM 101:2008, 6.4.9); of a ratio to first order (JCGM 100:2008, 5.1.2).
 */
final class FigureMeans {
    private final double[] first;
    private final double[] second;
    private final boolean ratio;

    /**
     * @param first a number for each person or unit, at least one
     * @param second the same of the other side, in the same unit
     */
    FigureMeans(double[] first, double[] second, boolean ratio) {
        this.first = first.clone();
        this.second = second.clone();
        this.ratio = ratio;
    }

    double value() {
        return ratio ? mean(first) / mean(second) : mean(first) - mean(second);
    }

    /** Absent where a side is a single one, which tells nothing of others. */
    Optional<Errors> errors() {
        return scatters().isEmpty() ? Optional.empty() : Optional.of(new MixedErrors(0, scatters()));
    }

    /** One of either side; none where a side is a single one. */
    List<Scatter> scatters() {
        if (first.length < 2 || second.length < 2) {
            return List.of();
        }
        double ofFirst = ratio ? 1 / Math.abs(mean(second)) : 1;
        double ofSecond = ratio ? Math.abs(value() / mean(second)) : 1;
        return List.of(scatter(first, ofFirst), scatter(second, ofSecond));
    }

    private static Scatter scatter(double[] side, double factor) {
        double mean = mean(side);
        double squares = Arrays.stream(side).map(x -> (x - mean) * (x - mean)).sum();
        int n = side.length;
        return new Scatter(n - 1, factor * Math.sqrt(squares / (n - 1.0) / n));
    }

    private static double mean(double[] side) {
        return Arrays.stream(side).average().orElseThrow();
    }
}
