package org.ellwand.quantity;

/** Where a series first crosses a value: straight line between its points. */
final class Crossing {
    private Crossing() {}

    /**
     * The place of the first point that lies at or beyond the value, interpolated from the point before it.
     *
     * @param x places, in the order of the search
     * @param y numbers at them
     * @param value what is looked for
     * @param falling whether the series comes from above
     * @return the first place where the series is beyond from the start; NaN where it never is
     */
    static double first(double[] x, double[] y, double value, boolean falling) {
        for (int i = 0; i < x.length; i++) {
            boolean beyond = falling ? y[i] <= value : y[i] >= value;
            if (beyond) {
                return i == 0 ? x[0] : x[i - 1] + (value - y[i - 1]) / (y[i] - y[i - 1]) * (x[i] - x[i - 1]);
            }
        }
        return Double.NaN;
    }
}
