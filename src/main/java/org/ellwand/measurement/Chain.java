package org.ellwand.measurement;

import java.util.List;
import java.util.Optional;
import org.ellwand.amount.Amount;

/**
 * What a session says of its measuring chain and of what it measures, for the checks of the data.
 *
 * @param calibration absent where nothing was said
 * @param averaging how long each level was averaged
 * @param overload the level from which the chain no longer follows
 * @param weakestFirst the settings in the order in which they are to take more off; empty where nothing was said
 * @param openByDesign whether the product is vented, so that low notes passing are no fault
 * @param recorded what is wrong with its recordings
 */
public record Chain(
        Optional<Calibration> calibration,
        Optional<Amount> averaging,
        Optional<Amount> overload,
        List<String> weakestFirst,
        boolean openByDesign,
        List<RecordedNote> recorded) {
    /** A chain of which nothing was said. */
    public static final Chain UNSTATED = new Chain(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * Keeps copies of the lists.
     *
     * @param calibration absent where nothing was said
     * @param averaging how long each level was averaged
     * @param overload the level from which the chain no longer follows
     * @param weakestFirst the settings in the order in which they are to take more off
     * @param openByDesign whether the product is vented, so that low notes passing are no fault
     * @param recorded what is wrong with its recordings
     */
    public Chain {
        weakestFirst = List.copyOf(weakestFirst);
        recorded = List.copyOf(recorded);
    }

    /**
     * A chain without recordings, of which no more is said.
     *
     * @param calibration absent where nothing was said
     * @param averaging how long each level was averaged
     * @param overload the level from which the chain no longer follows
     */
    public Chain(Optional<Calibration> calibration, Optional<Amount> averaging, Optional<Amount> overload) {
        this(calibration, averaging, overload, List.of(), false, List.of());
    }

    /** This chain with what is wrong with its recordings. */
    Chain with(List<RecordedNote> notes) {
        return new Chain(calibration, averaging, overload, weakestFirst, openByDesign, notes);
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
