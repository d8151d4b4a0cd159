package org.ellwand.claim;

import org.ellwand.amount.Interval;

/** What a response is relative to. */
public sealed interface Reference {
    /**
     * {@code mean of 200 Hz to 4 kHz}: mean of the levels in dB over these nominal band centres.
     *
     * @param hz nominal band centres in Hz, ends included
     */
    record MeanOf(Interval hz) implements Reference {}

    /**
     * {@code 1 kHz}: the level of the band at this nominal frequency.
     *
     * @param frequencyHz nominal, in Hz
     */
    record At(double frequencyHz) implements Reference {}
}
