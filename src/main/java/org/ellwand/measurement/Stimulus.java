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
    /** The kind that stands for no sound: the background. */
    public static final String QUIET = "quiet";

    /** {@return whether it stands for no sound} */
    public boolean isQuiet() {
        return kind.equals(QUIET);
    }

    /**
     * The level in one weighting, where it is given.
     *
     * @param unit {@link Unit#DB_SPL}, {@link Unit#DB_A} or {@link Unit#DB_C}
     * @return in dB; empty where it was not given in this weighting
     */
    public Optional<Double> levelIn(Unit unit) {
        for (Amount level : levels) {
            if (level.unit() == unit) {
                return Optional.of(level.value());
            }
        }
        return Optional.empty();
    }
}
