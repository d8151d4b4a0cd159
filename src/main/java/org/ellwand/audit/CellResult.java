package org.ellwand.audit;

import java.util.List;
import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.measurement.Conditions;

/**
 * What was found in one cell.
 *
 * @param conditions what all its readings have in common
 * @param insertions how many insertions were averaged
 * @param value the rule's statistic of the mean curve, unit of the limit
 * @param bound whether the value is measured, or only bounds the true number
 * @param standardUncertainty of {@code value}; for an extreme that of its least probable point
 * @param probability of the cell's deciding point
 * @param bands the curve, band by band; empty where the quantity has none
 * @param inPlaceDb levels of the product in place by band (mean curve), aligned with {@code bands}; empty where none
 * @param openEarDb levels of the open ear by band, aligned with {@code bands}; empty where none
 * @param insertionCurves each insertion's own curve, aligned with {@code bands}
 * @param contributions what makes up the uncertainty of {@code value}, largest first
 * @param series the numbers, lowest level first, in which {@code value} was looked for; empty where it was not
 * @param settled the times that {@code value} is the mean of, each with the trace it was read off; empty where it is no
 *     attack or release time. Neither this nor the series is written to {@code audit.json}
 */
public record CellResult(
        Conditions conditions,
        int insertions,
        double value,
        Bound bound,
        OptionalDouble standardUncertainty,
        OptionalDouble probability,
        List<Point> bands,
        List<Double> inPlaceDb,
        List<Double> openEarDb,
        List<List<Double>> insertionCurves,
        List<Contribution> contributions,
        List<AtLevel> series,
        List<Settled> settled) {

    /**
     * Without a series and traces.
     *
     * @param conditions what all its readings have in common
     * @param insertions how many insertions were averaged
     * @param value unit of the limit
     * @param bound whether the value is measured
     * @param standardUncertainty of the value, unit of the limit
     * @param probability of the cell's deciding point
     * @param bands the curve, band by band
     * @param inPlaceDb levels of the product in place by band
     * @param openEarDb levels of the open ear by band
     * @param insertionCurves each insertion's own curve
     * @param contributions what makes up the uncertainty, largest first
     */
    public CellResult(
            Conditions conditions,
            int insertions,
            double value,
            Bound bound,
            OptionalDouble standardUncertainty,
            OptionalDouble probability,
            List<Point> bands,
            List<Double> inPlaceDb,
            List<Double> openEarDb,
            List<List<Double>> insertionCurves,
            List<Contribution> contributions) {
        this(
                conditions,
                insertions,
                value,
                bound,
                standardUncertainty,
                probability,
                bands,
                inPlaceDb,
                openEarDb,
                insertionCurves,
                contributions,
                List.of(),
                List.of());
    }

    /**
     * One number of a series over the level of the test sound.
     *
     * @param levelDb level of the test sound, unit of the limit
     * @param value gain in dB, or level at the ear in dB(A)
     */
    public record AtLevel(double levelDb, double value) {}

    /**
     * When one trace had settled.
     *
     * @param session id of the trace's session
     * @param file of the trace, relative to the audited folder
     * @param value time from the step, unit of the limit
     */
    public record Settled(String session, String file, double value) {}
}
