package org.ellwand.report;

/**
 * Where a value of a plot stands on the page.
 *
 * @param left left edge of the plot, px
 * @param top upper edge, px
 * @param width px
 * @param height px
 * @param fromX value at the left edge, already on its scale (lg f for a frequency)
 * @param toX value at the right edge
 * @param fromY value at the lower edge
 * @param toY value at the upper edge
 */
record Frame(double left, double top, double width, double height, double fromX, double toX, double fromY, double toY) {
    double x(double value) {
        return left + (value - fromX) / (toX - fromX) * width;
    }

    double y(double value) {
        return top + (toY - value) / (toY - fromY) * height;
    }

    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }

    /** A coordinate with two decimals and no signed zero. */
    static String px(double value) {
        return Numbers.fixed(value, 2).replace('\u2212', '-');
    }

    static String point(double x, double y) {
        return px(x) + "," + px(y);
    }
}
