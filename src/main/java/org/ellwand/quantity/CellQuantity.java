package org.ellwand.quantity;

import java.util.List;
import java.util.Optional;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.pairing.Joining;
import org.ellwand.pairing.Source;
import org.ellwand.words.Remark;

/** A quantity that is computed from the readings of cells. */
public interface CellQuantity extends Quantity {
    /** Where its readings in place come from. */
    default Source source(Rule rule) {
        return Source.CURVES;
    }

    /** Which cells one number is computed from together. */
    default Joining joining() {
        return Joining.ALONE;
    }

    /** Whether the readings in place are held against the open ear. */
    default boolean usesOpenEar(Rule rule) {
        return false;
    }

    /**
     * The rule with what this quantity leaves no choice of: its statistic and its weighting. What the rule says itself
     * stays.
     */
    default Rule completed(Rule rule) {
        return rule;
    }

    /**
     * Refuses what this quantity cannot make of a rule whose keys are all right by themselves.
     *
     * @throws InputException at the rule's place
     */
    default void check(Rule rule) throws InputException {}

    /** What a reader must know of how the number was found. */
    default List<Remark> notes(List<Cell> cells, Rule rule) {
        return List.of();
    }

    /** Why cells that meet the rule's conditions cannot be used; empty where they can. */
    default Optional<Remark> unusable(Joined joined, Rule rule) {
        return Optional.empty();
    }

    /** What a cell lacks of what the rule sums over, in the words of reports; empty where nothing. */
    default Optional<Remark> lacking(Cell cell, Rule rule) {
        return Optional.empty();
    }

    /** How the number is computed. */
    Formula formula(Joined joined, Rule rule);
}
