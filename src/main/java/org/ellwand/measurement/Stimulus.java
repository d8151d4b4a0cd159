package org.ellwand.measurement;

import java.util.List;
import java.util.Optional;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;

/**
 * A test sound.
 *
 * @param id the session's name for it
 * @param kind pink noise, music, quiet, …
 * @param levels its level, in one or several weightings; each a dB SPL, dB(A) or dB(C)
 * @param peak its peak level
 */
public record Stimulus(String id, String kind, List<Amount> levels, Optional<Amount> peak) {
    public static final String QUIET = "quiet";

    public boolean isQuiet() {
        return kind.equals(QUIET);
    }

    /** The level in one weighting, where it is given. */
    public Optional<Double> levelIn(Unit unit) {
        return levels.stream().filter(a -> a.unit() == unit).map(Amount::value).findFirst();
    }
}
