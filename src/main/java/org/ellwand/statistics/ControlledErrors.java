package org.ellwand.statistics;

import java.util.Arrays;

/**
 * Errors known by their draws, each beside the draw of a control whose distribution is known exactly:
 * P(E ≤ x) = P(C ≤ x) + share of draws with E ≤ x − share of draws with C ≤ x. Where E is nearly C, most of the sampling
 * error is common to both shares and cancels (control variate), so that few draws say what many would.
 */
public final class ControlledErrors implements Errors {
    private static final int HALVINGS = 60;

    private final SortedDraws draws;
    private final SortedDraws controls;
    private final Errors control;
    private final double shift;
    private double uncertainty = Double.NaN;

    /**
     * Errors of these draws.
     *
     * @param draws errors as drawn, at least one
     * @param controls the control of each draw
     * @param control distribution of the controls
     */
    public ControlledErrors(double[] draws, double[] controls, Errors control) {
        shift = mean(draws) - mean(controls);
        this.control = control;
        this.draws = new SortedDraws(draws);
        this.controls =
                new SortedDraws(Arrays.stream(controls).map(c -> c + shift).toArray());
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(0);
    }

    @Override
    public double atMost(double x) {
        double difference = (double) (draws.atMost(x) - controls.atMost(x)) / draws.size();
        return Math.min(1, Math.max(0, control.atMost(x - shift) + difference));
    }

    @Override
    public double quantile(double probability) {
        double reach = Math.abs(draws.get(0)) + Math.abs(draws.get(draws.size() - 1)) + Math.abs(shift);
        double low = Math.min(shift + control.quantile(probability), 0) - reach;
        double high = Math.max(shift + control.quantile(probability), 0) + reach;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (atMost(middle) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    @Override
    public double standardUncertainty() {
        if (Double.isNaN(uncertainty)) {
            uncertainty = Errors.super.standardUncertainty();
        }
        return uncertainty;
    }
}
