package org.ellwand.measurement;

import java.util.List;
import java.util.Optional;
import org.ellwand.amount.Amount;

/**
 * What a session says of its measuring chain, for the checks of the data.
 *
 * @param calibration absent where nothing was said
 * @param averaging how long each level was averaged
 * @param overload the level from which the chain no longer follows
 * @param recorded what is wrong with its recordings
 */
public record Chain(
        Optional<Calibration> calibration,
        Optional<Amount> averaging,
        Optional<Amount> overload,
        List<RecordedNote> recorded) {
    public static final Chain UNSTATED = new Chain(Optional.empty(), Optional.empty(), Optional.empty());

    public Chain {
        recorded = List.copyOf(recorded);
    }

    /** A chain without recordings. */
    public Chain(Optional<Calibration> calibration, Optional<Amount> averaging, Optional<Amount> overload) {
        this(calibration, averaging, overload, List.of());
    }

    /** This chain with what is wrong with its recordings. */
    Chain with(List<RecordedNote> notes) {
        return new Chain(calibration, averaging, overload, notes);
    }

    /**
     * What a calibrator read before and after, and the date of its certificate.
     *
     * @param before a level
     * @param after a level in the unit of {@code before}
     * @param dated a date as 2026-05-02
     */
    public record Calibration(Optional<Amount> before, Optional<Amount> after, Optional<String> dated) {}
}
