package org.ellwand.audit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ellwand.claim.Rule;

/**
 * What one rule came to.
 *
 * @param rule the rule that was judged
 * @param text the rule in one English line
 * @param probability of the deciding point; absent where untested or nothing tells the spread
 * @param value of the deciding cell, unit of the limit; absent where untested
 * @param correction what noise adds to {@code value} on average
 * @param point the deciding point
 * @param standardUncertainty of the deciding point
 * @param lower lower end of the central 95 % interval of the deciding point
 * @param upper upper end of that interval
 * @param reasons why the verdict is marginal or untested; empty for pass and fail
 * @param cells all cells, the deciding one first among equals of its conditions' order
 * @param notes what a reader must know: scaled open ears, scatter larger than declared, sizes declared 0 dB, …
 */
public record Judgement(
        Rule rule,
        String text,
        Verdict verdict,
        OptionalDouble probability,
        OptionalDouble value,
        OptionalDouble correction,
        Optional<Point> point,
        OptionalDouble standardUncertainty,
        OptionalDouble lower,
        OptionalDouble upper,
        List<Reason> reasons,
        List<CellResult> cells,
        List<String> notes) {

    /** The same numbers with another verdict, and why. */
    Judgement with(Verdict other, Reason because) {
        return new Judgement(
                rule,
                text,
                other,
                probability,
                value,
                correction,
                point,
                standardUncertainty,
                lower,
                upper,
                List.of(because),
                cells,
                notes);
    }

    /** All reasons in one line; absent where there is none. */
    public Optional<String> reason() {
        return reasons.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        String.join("; ", reasons.stream().map(Reason::text).toList()));
    }
}
