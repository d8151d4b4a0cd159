package org.ellwand.measurement;

/** What all readings with one draw of a cause have in common. */
public enum SharedBy {
    /** All readings of a session. */
    SESSION,
    /** Readings of one insertion of a product, or of one placement of a probe. */
    INSERTION,
    /** Each reading has a draw of its own. */
    READING,
    /** Readings in the same ear. */
    EAR,
    /** Readings of the same sample of a product. */
    UNIT
}
