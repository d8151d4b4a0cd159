package org.ellwand.statistics;

import java.util.Arrays;

/** Draws in their order, to be counted; what is NaN, which a sort puts last, is left out. */
final class SortedDraws {
    private final double[] sorted;

    SortedDraws(double[] draws) {
        double[] ordered = draws.clone();
        Arrays.sort(ordered);
        int numbers = ordered.length;
        while (numbers > 0 && Double.isNaN(ordered[numbers - 1])) {
            numbers--;
        }
        sorted = Arrays.copyOf(ordered, numbers);
    }

    int size() {
        return sorted.length;
    }

    /** From 0 on, the least first. */
    double get(int at) {
        return sorted[at];
    }

    int atMost(double x) {
        return count(x, true);
    }

    int below(double x) {
        return count(x, false);
    }

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
}
