package org.ellwand.acoustics;

/** Whether a number is a measured value or only a bound of one. */
public enum Bound {
    MEASURED,
    /** The true value is this or more. */
    AT_LEAST,
    /** The true value is this or less. */
    AT_MOST;

    /** The bound of the value with its sign turned. */
    public Bound negated() {
        return switch (this) {
            case MEASURED -> MEASURED;
            case AT_LEAST -> AT_MOST;
            case AT_MOST -> AT_LEAST;
        };
    }
}
