package org.ellwand.statistics;

import java.util.Arrays;

/**
 * Errors known by their draws alone, of a number that may lie beyond what could be told: +∞ or −∞ where it lies beyond an
 * end, NaN where nothing can be said. What cannot be said counts for no side.
 */
public final class SeriesErrors implements Errors {
    private final double[] sorted;
    private final int draws;

    /** @param draws errors as drawn */
    public SeriesErrors(double[] draws) {
        this.draws = draws.length;
        sorted = Arrays.stream(draws).filter(d -> !Double.isNaN(d)).sorted().toArray();
    }

    @Override
    public double atMost(double x) {
        return (double) count(x, true) / draws;
    }

    @Override
    public double atLeast(double x) {
        return (double) (sorted.length - count(x, false)) / draws;
    }

    /** How many draws are less than x, or at most x. */
    private int count(double x, boolean orEqual) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < x || (orEqual && sorted[middle] == x)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Infinite where the quantile lies beyond an end; NaN where nothing can be said of any draw. */
    @Override
    public double quantile(double probability) {
        if (sorted.length == 0) {
            return Double.NaN;
        }
        int at = (int) Math.ceil(probability * sorted.length) - 1;
        return sorted[Math.max(0, Math.min(sorted.length - 1, at))];
    }

    /** {@return the share of the draws of which nothing can be said, between 0 and 1} */
    public double unknown() {
        return 1 - (double) sorted.length / draws;
    }
}
