package org.ellwand.statistics;

/**
 * Errors known by their draws alone, of a number that may lie beyond what could be told: +∞ or −∞ where it lies beyond an
 * end, NaN where nothing can be said. What cannot be said counts for no side.
 */
public final class SeriesErrors implements Errors {
    private final SortedDraws known;
    private final int draws;

    /**
     * Errors of these draws.
     *
     * @param draws errors as drawn, at least one
     */
    public SeriesErrors(double[] draws) {
        this.draws = draws.length;
        this.known = new SortedDraws(draws);
    }

    @Override
    public double atMost(double x) {
        return (double) known.atMost(x) / draws;
    }

    @Override
    public double atLeast(double x) {
        return (double) (known.size() - known.below(x)) / draws;
    }

    /** Infinite where the quantile lies beyond an end; NaN where nothing can be said of any draw. */
    @Override
    public double quantile(double probability) {
        if (known.size() == 0) {
            return Double.NaN;
        }
        int at = (int) Math.ceil(probability * known.size()) - 1;
        return known.get(Math.max(0, Math.min(known.size() - 1, at)));
    }

    /** {@return the share of the draws of which nothing can be said, between 0 and 1} */
    public double unknown() {
        return 1 - (double) known.size() / draws;
    }
}
