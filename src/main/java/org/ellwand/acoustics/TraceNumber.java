package org.ellwand.acoustics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A number computed from level traces, or why there is none: exactly one of the two.
 *
 * @param value in the unit that the computation names
 * @param reason why there is no value
 */
public record TraceNumber(OptionalDouble value, Optional<NoNumber> reason) {
    /**
     * Refuses both and neither.
     *
     * @param value in the unit that the computation names
     * @param reason why there is no value
     * @throws IllegalArgumentException where value and reason are both there or both missing
     */
    public TraceNumber {
        if (value.isPresent() == reason.isPresent()) {
            throw new IllegalArgumentException("either a value or a reason why there is none");
        }
    }

    static TraceNumber of(double value) {
        return new TraceNumber(OptionalDouble.of(value), Optional.empty());
    }

    static TraceNumber none(NoNumber reason) {
        return new TraceNumber(OptionalDouble.empty(), Optional.of(reason));
    }
}
