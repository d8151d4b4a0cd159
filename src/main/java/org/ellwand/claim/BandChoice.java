package org.ellwand.claim;

import org.ellwand.amount.Interval;

/** Over which bands a rule speaks. */
public sealed interface BandChoice {
    /** Every band that was measured. */
    record All() implements BandChoice {}

    /**
     * Nominal band centres from one frequency to another, ends included; the interval is in Hz.
     *
     * @param hz nominal band centres in Hz, ends included
     */
    record Range(Interval hz) implements BandChoice {}
}
