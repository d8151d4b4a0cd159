package org.ellwand.audit;

import java.util.OptionalInt;

/**
 * What one cause adds to the uncertainty of a cell's number.
 *
 * @param cause name of the cause
 * @param instance what it is shared by, as {@code yard-crew-01/1}
 * @param effect standard uncertainty it gives the number, in the limit's unit, not negative
 * @param degreesOfFreedom of a scatter that was observed, whose draws are a scaled t; absent for a declared cause
 */
public record Contribution(String cause, String instance, double effect, OptionalInt degreesOfFreedom) {
    /** The cause of what a single figure was declared to be uncertain by. */
    public static final String OF_FIGURE = "uncertainty of the figure";

    /**
     * Of a declared cause.
     *
     * @param cause name of the cause
     * @param instance what it is shared by
     * @param effect standard uncertainty it gives the number, in the limit's unit, not negative
     */
    public Contribution(String cause, String instance, double effect) {
        this(cause, instance, effect, OptionalInt.empty());
    }
}
