package org.ellwand.measurement;

import org.ellwand.amount.Amount;

/**
 * A step of the sound's level.
 *
 * @param at time of the step on the clock of its trace
 * @param from level before it
 * @param to level after it, in the unit of {@code from} and not equal to it
 */
public record Step(Amount at, Amount from, Amount to) {}
