package org.ellwand.plan;

import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Stimulus;

/** How loud a test sound is, for the order of a sitting and for the ear. */
final class Loudness {
    /** Above this nothing is planned on people: a fixture serves (common practice, no source). */
    static final double MOST_ON_PEOPLE_DB = 100;

    /** The open ear is read at this level or below, and louder ones are derived (common practice, no source). */
    static final double OPEN_EAR_DB = 80;

    /** Where no quieter sound is planned, the open ear is read at this one (common practice, no source). */
    static final double SPARING_DB = 75;

    private Loudness() {}

    /**
     * Level in the field in dB(A). An unweighted level stands for itself: no weighting makes broadband sound of the
     * audible range read more than about 1 dB higher, so this errs on the ear's side.
     */
    static double fieldDb(Stimulus stimulus) {
        return stimulus.levelIn(Unit.DB_A)
                .or(() -> stimulus.levels().stream().findFirst().map(Amount::value))
                .orElse(0.0);
    }

    /** Ascending; quiet is the quietest. */
    static int order(Stimulus a, Stimulus b) {
        int byLevel = Double.compare(rank(a), rank(b));
        return byLevel != 0 ? byLevel : a.id().compareTo(b.id());
    }

    private static double rank(Stimulus stimulus) {
        return stimulus.isQuiet() ? Double.NEGATIVE_INFINITY : fieldDb(stimulus);
    }
}
