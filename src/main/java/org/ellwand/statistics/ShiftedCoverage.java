package org.ellwand.statistics;

import java.util.TreeSet;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The confidence of the interval about a sample's mean that just fits between limits, averaged over a normal shift of the
 * mean. Gauss–Legendre between breaks that are close where the shift's density or the confidence changes, and at the
 * middle of the limits, where the distance to the nearer one has its kink; accuracy better than 1e-8.
 */
record ShiftedCoverage(CentralCoverage coverage, NormalSample sample, Limits limits) {
    private static final int POINTS = 10;
    private static final GaussIntegratorFactory RULES = new GaussIntegratorFactory();
    /** Shifts beyond so many standard deviations are left out: 1e-12 of all. */
    private static final int REACH = 7;
    /** Confidences so close to 0 and 1 need no breaks. */
    private static final double FLAT = 1e-10;
    /** Breaks in k grow by so many relative standard deviations of χ, 1/√(2ν). */
    private static final double GROWTH = 1.5;

    double mean(double deviation) {
        TreeSet<Double> breaks = breaks(deviation);
        double sum = 0;
        for (double from : breaks) {
            Double to = breaks.higher(from);
            sum += to == null ? 0 : piece(deviation, from, to);
        }
        return Math.min(1, sum);
    }

    private double piece(double deviation, double from, double to) {
        GaussIntegrator rule = RULES.legendre(POINTS, from, to);
        return rule.integrate(shift -> density(shift / deviation) / deviation * confidence(shift));
    }

    private static double density(double z) {
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }

    private double confidence(double shift) {
        return coverage.confidence(limits.margin(sample.mean() + shift) / sample.standardDeviation());
    }

    private TreeSet<Double> breaks(double deviation) {
        double lowest = Math.max(-REACH * deviation, limits.lower() - sample.mean());
        double highest = Math.min(REACH * deviation, limits.upper() - sample.mean());
        TreeSet<Double> breaks = new TreeSet<>();
        if (lowest < highest) {
            addInner(breaks, deviation);
            breaks.headSet(lowest, true).clear();
            breaks.tailSet(highest, true).clear();
            breaks.add(lowest);
            breaks.add(highest);
        }
        return breaks;
    }

    private void addInner(TreeSet<Double> breaks, double deviation) {
        for (int z = -REACH; z <= REACH; z++) {
            breaks.add(z * deviation);
        }
        double middle = (limits.lower() + limits.upper()) / 2;
        breaks.add(middle - sample.mean());
        double half = limits.margin(middle);
        double growth = 1 + GROWTH / Math.sqrt(2 * (sample.count() - 1.0));
        for (double k = coverage.factor(FLAT);
                k * sample.standardDeviation() < half && coverage.confidence(k) < 1 - FLAT;
                k *= growth) {
            breaks.add(limits.lower() - sample.mean() + k * sample.standardDeviation());
            breaks.add(limits.upper() - sample.mean() - k * sample.standardDeviation());
        }
    }
}
