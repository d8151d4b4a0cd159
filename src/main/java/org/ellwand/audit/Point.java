package org.ellwand.audit;

import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;

/**
 * One judged number of a cell.
 *
 * @param hz nominal band centre; absent where the point is a cell
 * @param lessHz for a difference of two bands: the band that is subtracted
 * @param value unit of the limit, from the unperturbed readings
 * @param standardUncertainty half of the central 68.27 % interval of the draws; absent where nothing tells the spread
 * @param lower lower end of the central 95 % interval
 * @param upper upper end of the central 95 % interval
 * @param probability that the limit holds here
 * @param bound whether the value is measured, or only bounds the true number
 */
public record Point(
        OptionalDouble hz,
        OptionalDouble lessHz,
        double value,
        OptionalDouble standardUncertainty,
        OptionalDouble lower,
        OptionalDouble upper,
        OptionalDouble probability,
        Bound bound) {}
