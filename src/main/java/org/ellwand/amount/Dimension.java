package org.ellwand.amount;

/**
 * What kind of thing a unit measures. Amounts of different dimensions never compare. The three levels are dimensions
 * of their own on purpose: dB SPL, dB(A) and dB(C) never match each other.
 */
public enum Dimension {
    /** In Hz. */
    FREQUENCY,
    /** A difference of levels, plain {@code dB}. */
    LEVEL_DIFFERENCE,
    /** Sound pressure level re 20 µPa, no frequency weighting. */
    LEVEL,
    /** Sound level re 20 µPa with frequency weighting A. */
    LEVEL_A,
    /** Sound level re 20 µPa with frequency weighting C. */
    LEVEL_C,
    /** Levels against frequency, in dB per octave. */
    SLOPE,
    /** A part of a whole, in %. */
    SHARE,
    /** Durations, in s. */
    TIME,
    /** Lengths, in m. */
    LENGTH,
    /** Electric voltage, in V. */
    VOLTAGE,
    /** Electric current, in A. */
    CURRENT,
    /** Electric charge, as of a battery, in Ah. */
    CHARGE,
    /** Power, in W. */
    POWER,
    /** Mass, in kg. */
    MASS,
    /** A number without a unit. */
    NONE
}
