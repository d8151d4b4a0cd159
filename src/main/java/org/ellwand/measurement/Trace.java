package org.ellwand.measurement;

import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.LevelTrace;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;

/**
 * A level against time.
 *
 * @param step of the sound, inside the trace; a trace without one was taken under a steady sound or programme
 * @param levelsIn unit of the levels
 * @param timeS seconds, rising; at least two
 * @param levelDb the level at each time
 */
public record Trace(
        Conditions conditions,
        Optional<Step> step,
        Unit levelsIn,
        List<Double> timeS,
        List<Double> levelDb,
        Place place) {

    /** Its times and levels as acoustics takes them. */
    public LevelTrace levels() {
        return new LevelTrace(numbers(timeS), numbers(levelDb));
    }

    private static double[] numbers(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
