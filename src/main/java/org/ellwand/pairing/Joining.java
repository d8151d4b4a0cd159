package org.ellwand.pairing;

/** Which cells one number is computed from together. */
public enum Joining {
    /** Each cell by itself. */
    ALONE,
    /** The levels of one kind of stimulus. */
    LEVELS,
    /** What was measured in quiet, and the lowest level of any sound. */
    QUIET_AND_LOWEST
}
