package org.ellwand.acoustics;

/** Whether a number is a measured value or only a bound of one. */
public enum Bound {
    /** The true value is this, within its uncertainty. */
    MEASURED,
    /** The true value is this or more. */
    AT_LEAST,
    /** The true value is this or less. */
    AT_MOST;

    /** {@return the bound of the value with its sign turned} */
    public Bound negated() {
        return switch (this) {
            case MEASURED -> MEASURED;
            case AT_LEAST -> AT_MOST;
            case AT_MOST -> AT_LEAST;
        };
    }
}
