package org.ellwand.acoustics;

import java.util.stream.IntStream;

/**
 * One band of a fractional-octave set.
 *
 * <p>Mid-band frequency f = 1000 · G^(x/b) Hz for an odd number b of bands per octave and 1000 · G^((2x+1)/(2b)) Hz
 * for an even one, G = 10^(3/10); band edges f · G^(∓1/(2b)). IEC 61260-1:2014, formulas 1 to 5 (read in a public
 * restatement, the standard itself was not opened). Nominal frequencies: ISO 266 for octaves and third octaves; for the
 * narrower ones the exact frequency rounded to three digits where the first digit is 1 to 4, else to two (IEC 61260-1,
 * annex E, from memory).
 *
 * @param resolution the set the band belongs to
 * @param index x in the formula; 0 is the band at (or, for even b, just above) 1 kHz
 */
public record Band(Resolution resolution, int index) implements Comparable<Band> {
    private static final double OCTAVE_RATIO = Math.pow(10, 0.3);
    private static final double[] THIRD_DIGITS = {1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8};

    /** Asked for with every number of every reading, and so worked out once. */
    private static final int TABLE_HALF = 30;

    private static final double[] NOMINAL_HZ = IntStream.rangeClosed(-TABLE_HALF, TABLE_HALF)
            .mapToDouble(Band::nominalHz)
            .toArray();

    /** {@return the exact mid-band frequency in Hz} */
    public double exactHz() {
        int b = resolution.bandsPerOctave();
        double exponent = b % 2 == 1 ? (double) index / b : (2.0 * index + 1) / (2.0 * b);
        return 1000 * Math.pow(OCTAVE_RATIO, exponent);
    }

    /** {@return the nominal mid-band frequency in Hz, the one that is printed: 31.5, 125, 3150} */
    public double nominalHz() {
        if (resolution.bandsPerOctave() <= 3) {
            int third = index * 3 / resolution.bandsPerOctave();
            int at = third + TABLE_HALF;
            return at >= 0 && at < NOMINAL_HZ.length ? NOMINAL_HZ[at] : nominalHz(third);
        }
        double exact = exactHz();
        double decade = Math.pow(10, Math.floor(Math.log10(exact)));
        double step = exact / decade < 5 ? decade / 100 : decade / 10;
        return Math.round(Math.round(exact / step) * step * 1e6) / 1e6;
    }

    private static double nominalHz(int third) {
        double scale = Math.pow(10, Math.floorDiv(third, 10));
        return Math.round(THIRD_DIGITS[Math.floorMod(third, 10)] * 1000 * scale * 1e6) / 1e6;
    }

    /** {@return the exact lower edge in Hz: f · G^(−1/(2b))} */
    public double lowerEdgeHz() {
        return exactHz() * Math.pow(OCTAVE_RATIO, -0.5 / resolution.bandsPerOctave());
    }

    /** {@return the exact upper edge in Hz: f · G^(1/(2b))} */
    public double upperEdgeHz() {
        return exactHz() * Math.pow(OCTAVE_RATIO, 0.5 / resolution.bandsPerOctave());
    }

    /**
     * {@return the band whose mid-band frequency lies nearest on a logarithmic scale}
     *
     * @param resolution the set to choose from
     * @param frequencyHz above 0, in Hz
     */
    public static Band nearest(Resolution resolution, double frequencyHz) {
        int b = resolution.bandsPerOctave();
        double steps = b * Math.log(frequencyHz / 1000) / Math.log(OCTAVE_RATIO);
        return new Band(resolution, (int) Math.round(b % 2 == 1 ? steps : steps - 0.5));
    }

    /**
     * {@return the band of a coarser set that holds this one} The sets of this class tile each other exactly.
     *
     * @param coarser a set of wider bands, or this band's own
     */
    public Band within(Resolution coarser) {
        return coarser == resolution ? this : nearest(coarser, exactHz());
    }

    @Override
    public int compareTo(Band other) {
        int byWidth = resolution.compareTo(other.resolution);
        return byWidth != 0 ? byWidth : Integer.compare(index, other.index);
    }
}
