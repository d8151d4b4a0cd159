package org.ellwand.quantity;

/** What a spectral computation makes of its curve. */
public enum Outcome {
    /** The curve itself, one number a band. */
    CURVE,
    /** Every pair of bands: the lower band's number less the higher band's, pairs in lexical order. */
    PAIRS,
    /** The mean over the bands. */
    MEAN,
    /** dB per octave, least squares on log2 f. */
    SLOPE,
    /** Energy-summed levels, each part with its sign. */
    OVERALL;

    /**
     * {@return how many numbers come out of a curve of so many bands}
     *
     * @param bands how many
     */
    public int size(int bands) {
        return switch (this) {
            case CURVE -> bands;
            case PAIRS -> bands * (bands - 1) / 2;
            case MEAN, SLOPE, OVERALL -> 1;
        };
    }
}
