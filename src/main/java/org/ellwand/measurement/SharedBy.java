package org.ellwand.measurement;

/** What all readings with one draw of a cause have in common. */
public enum SharedBy {
    SESSION,
    INSERTION,
    READING,
    EAR,
    UNIT
}
