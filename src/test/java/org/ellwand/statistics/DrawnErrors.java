package org.ellwand.statistics;

import java.util.Arrays;

/** Errors known by plain draws, to hold short cuts against. */
public final class DrawnErrors implements Errors {
    private final double[] sorted;

    public DrawnErrors(double[] draws) {
        sorted = draws.clone();
        Arrays.sort(sorted);
    }

    @Override
    public double atMost(double x) {
        return (double) countBelow(Math.nextUp(x)) / sorted.length;
    }

    @Override
    public double atLeast(double x) {
        return 1 - (double) countBelow(x) / sorted.length;
    }

    /** Linear between the order statistics at (i + ½)/n. */
    @Override
    public double quantile(double probability) {
        double at = Math.min(Math.max(probability * sorted.length - 0.5, 0), sorted.length - 1);
        int below = (int) at;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }

    private int countBelow(double x) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < x) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
