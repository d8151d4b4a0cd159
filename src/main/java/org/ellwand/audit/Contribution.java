package org.ellwand.audit;

/**
 * What one cause adds to the uncertainty of a cell's number.
 *
 * @param cause name of the cause
 * @param instance what it is shared by, as {@code yard-crew-01/1}
 * @param effect standard uncertainty it gives the number, in the limit's unit, not negative
 */
public record Contribution(String cause, String instance, double effect) {}
