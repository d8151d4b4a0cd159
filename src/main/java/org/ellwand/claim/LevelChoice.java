package org.ellwand.claim;

import org.ellwand.amount.Interval;

/** Which stimulus levels a rule speaks of. */
public sealed interface LevelChoice {
    record All() implements LevelChoice {}

    /** Levels inside an interval whose unit says the weighting; a single value has been widened to ± 1 dB. */
    record Range(Interval level) implements LevelChoice {}
}
