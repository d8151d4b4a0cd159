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
    /**
     * {@return where its readings in place come from: curves, traces, harmonics}
     *
     * @param rule of this quantity
     */
    default Source source(Rule rule) {
        return Source.CURVES;
    }

    /** {@return which cells one number is computed from together} */
    default Joining joining() {
        return Joining.ALONE;
    }

    /**
     * {@return whether the readings in place are held against the open ear}
     *
     * @param rule of this quantity
     */
    default boolean usesOpenEar(Rule rule) {
        return false;
    }

    /**
     * {@return the rule with what this quantity leaves no choice of: its statistic and its weighting} What the rule
     * says itself stays.
     *
     * @param rule of this quantity
     */
    default Rule completed(Rule rule) {
        return rule;
    }

    /**
     * Refuses what this quantity cannot make of a rule whose keys are all right by themselves.
     *
     * @param rule of this quantity
     * @throws InputException at the rule's place
     */
    default void check(Rule rule) throws InputException {}

    /**
     * {@return what a reader must know of how the number was found}
     *
     * @param cells that the rule speaks of
     * @param rule of this quantity
     */
    default List<Remark> notes(List<Cell> cells, Rule rule) {
        return List.of();
    }

    /**
     * {@return why cells that meet the rule's conditions cannot be used; empty where they can}
     *
     * @param joined the cells of one number
     * @param rule of this quantity
     */
    default Optional<Remark> unusable(Joined joined, Rule rule) {
        return Optional.empty();
    }

    /**
     * {@return what a cell lacks of what the rule sums over, in the words of reports; empty where nothing}
     *
     * @param cell one of those that are used
     * @param rule of this quantity
     */
    default Optional<Remark> lacking(Cell cell, Rule rule) {
        return Optional.empty();
    }

    /**
     * {@return how the number is computed}
     *
     * @param joined the cells of one number
     * @param rule of this quantity
     */
    Formula formula(Joined joined, Rule rule);
}
