package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ellwand.amount.Interval;
import org.ellwand.claim.Rule;
import org.ellwand.words.Remark;
import org.ellwand.words.Sentences;

/**
 * What one rule came to.
 *
 * @param rule the rule that was judged
 * @param text the rule in one English line
 * @param verdict what the rule came to
 * @param probability of the deciding point; absent where untested or nothing tells the spread
 * @param value of the deciding cell, unit of the limit; absent where untested
 * @param correction what noise adds to {@code value} on average
 * @param point the deciding point
 * @param standardUncertainty of the deciding point
 * @param lower lower end of the central 95 % interval of the deciding point
 * @param upper upper end of that interval
 * @param reasons why the verdict is marginal or untested; empty for pass and fail
 * @param cells all cells, the deciding one first among equals of its conditions' order
 * @param remarks what a reader must know: scaled open ears, scatter larger than declared, sizes declared 0 dB, …
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
        List<Remark> reasons,
        List<CellResult> cells,
        List<Remark> remarks) {

    /** {@return the remarks in English} */
    public List<String> notes() {
        return Remark.texts(remarks);
    }

    /** Of more cells than this, those that are {@link #leastProbable} alone keep their curves. */
    public static final int MANY_CELLS = 200;

    /** So many keep them. */
    public static final int CURVES_KEPT = 50;

    /**
     * {@return some of the cells, least probable first; of equals the one nearest to, or farthest beyond, an end of the limit}
     *
     * @param most so many of them
     */
    public List<CellResult> leastProbable(int most) {
        return cells.stream().sorted(order(rule.limit())).limit(most).toList();
    }

    static Comparator<CellResult> order(Interval limit) {
        return Comparator.comparingDouble(
                        (CellResult cell) -> cell.probability().orElse(1))
                .thenComparingDouble(cell -> Math.min(cell.value() - limit.lower(), limit.upper() - cell.value()));
    }

    /**
     * {@return this judgement with some of its cells}
     *
     * @param some of them
     */
    public Judgement withCells(List<CellResult> some) {
        return with(verdict, reasons, some, remarks);
    }

    /** The same numbers with another verdict, and why. */
    Judgement with(Verdict other, Remark because) {
        return with(other, List.of(because), cells, remarks);
    }

    /** This judgement with more remarks. */
    Judgement noted(List<Remark> more) {
        if (more.isEmpty()) {
            return this;
        }
        List<Remark> all = new ArrayList<>(remarks);
        all.addAll(more);
        return with(verdict, reasons, cells, List.copyOf(all));
    }

    private Judgement with(Verdict other, List<Remark> because, List<CellResult> some, List<Remark> notes) {
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
                because,
                some,
                notes);
    }

    /** {@return all reasons in one line; absent where there is none} */
    public Optional<String> reason() {
        return reason(Sentences.english());
    }

    /**
     * {@return the same in these sentences}
     *
     * @param sentences what reasons say
     */
    public Optional<String> reason(Sentences sentences) {
        return reasons.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        String.join("; ", reasons.stream().map(sentences::of).toList()));
    }
}
