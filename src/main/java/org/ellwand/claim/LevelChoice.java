package org.ellwand.claim;

import org.ellwand.amount.Interval;

/** Which stimulus levels a rule speaks of. */
public sealed interface LevelChoice {
    /** Every level that was measured, said on purpose. */
    record All() implements LevelChoice {}

    /**
     * Levels inside an interval whose unit says the weighting; a single value has been widened to ± 1 dB.
     *
     * @param level in dB SPL, dB(A) or dB(C)
     */
    record Range(Interval level) implements LevelChoice {}
}
