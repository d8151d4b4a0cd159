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
 */
public record Chain(
        Optional<Calibration> calibration,
        Optional<Amount> averaging,
        Optional<Amount> overload,
        List<String> weakestFirst,
        boolean openByDesign) {
    public static final Chain UNSTATED = new Chain(Optional.empty(), Optional.empty(), Optional.empty());

    public Chain {
        weakestFirst = List.copyOf(weakestFirst);
    }

    public Chain(Optional<Calibration> calibration, Optional<Amount> averaging, Optional<Amount> overload) {
        this(calibration, averaging, overload, List.of(), false);
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
