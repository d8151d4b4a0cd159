package org.ellwand.measurement;

import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.LevelTrace;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;
import org.ellwand.words.Figures;

/**
 * A level against time.
 *
 * @param conditions everything known of it
 * @param step of the sound, inside the trace; a trace without one was taken under a steady sound or programme
 * @param levelsIn unit of the levels
 * @param timeS seconds, rising; at least two
 * @param levelDb the level at each time
 * @param place where its sheet begins
 * @param timeConstantS of the exponential time weighting, in s; empty where it is not known
 */
public record Trace(
        Conditions conditions,
        Optional<Step> step,
        Unit levelsIn,
        List<Double> timeS,
        List<Double> levelDb,
        Place place,
        Optional<Double> timeConstantS) {

    /**
     * A trace whose time weighting is not known.
     *
     * @param conditions everything known of it
     * @param step of the sound, inside the trace
     * @param levelsIn unit of the levels
     * @param timeS seconds, rising; at least two
     * @param levelDb the level at each time
     * @param place where its sheet begins
     */
    public Trace(
            Conditions conditions,
            Optional<Step> step,
            Unit levelsIn,
            List<Double> timeS,
            List<Double> levelDb,
            Place place) {
        this(conditions, step, levelsIn, timeS, levelDb, place, Optional.empty());
    }

    /** {@return its conditions with its step among them: traces of different steps are no repeats} */
    public Conditions named() {
        return step.map(s -> conditions.with(
                        "step",
                        Figures.plain(s.from().value()) + " to " + Figures.plain(s.to().value()) + " "
                                + s.to().unit().symbol()))
                .orElse(conditions);
    }

    /** {@return its times and levels as acoustics takes them} */
    public LevelTrace levels() {
        return new LevelTrace(numbers(timeS), numbers(levelDb));
    }

    private static double[] numbers(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
