package org.ellwand.amount;

/**
 * What kind of thing a unit measures. Amounts of different dimensions never compare. The three levels are dimensions
 * of their own on purpose: dB SPL, dB(A) and dB(C) never match each other.
 */
public enum Dimension {
    FREQUENCY,
    /** A difference of levels, plain {@code dB}. */
    LEVEL_DIFFERENCE,
    /** Sound pressure level re 20 µPa, no frequency weighting. */
    LEVEL,
    LEVEL_A,
    LEVEL_C,
    SLOPE,
    SHARE,
    TIME,
    LENGTH,
    VOLTAGE,
    CURRENT,
    CHARGE,
    POWER,
    MASS,
    /** A number without a unit. */
    NONE
}
