package org.ellwand.measurement;

import java.util.List;
import org.ellwand.amount.Amount;
import org.ellwand.input.Place;

/**
 * A level against time.
 *
 * @param timeS seconds, rising
 * @param levelDb the level at each time
 */
public record Trace(
        Conditions conditions,
        Amount stepAt,
        Amount stepFrom,
        Amount stepTo,
        List<Double> timeS,
        List<Double> levelDb,
        Place place) {}
