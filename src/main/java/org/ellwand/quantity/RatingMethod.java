package org.ellwand.quantity;

import java.util.Arrays;
import java.util.List;
import org.ellwand.acoustics.NoiseReductionRating;
import org.ellwand.acoustics.ReferenceNoise;
import org.ellwand.amount.Interval;
import org.ellwand.claim.Rule;

/** By whose rule a rating is computed: which test frequencies it takes, and how it is rounded. */
public enum RatingMethod {
    /** Formulas applied to mean − α · deviation. 63 Hz may be left out (from memory). */
    ISO_1994("ISO 4869-2:1994"),
    /** Each subject's own rating, then mean − α · deviation of these (read in a restatement; of SNR from memory). */
    ISO_2018("ISO 4869-2:2018"),
    /** An exact half goes to the next lower whole number. */
    CFR("40 CFR 211.207");

    private static final int LOWEST_OCTAVE_HZ = 63;
    private static final double NOISE = 1e9;

    private final String text;

    RatingMethod(String text) {
        this.text = text;
    }

    /**
     * {@return the method of a rule that the claims reader has accepted}
     *
     * @param rule of a rating
     */
    public static RatingMethod of(Rule rule) {
        return Arrays.stream(values())
                .filter(m -> m.text.equals(rule.method().get("method")))
                .findFirst()
                .orElseThrow();
    }

    /** {@return the method as claims name it} */
    public String text() {
        return text;
    }

    /** {@return the test frequencies in Hz, lowest first} */
    public List<Integer> frequenciesHz() {
        return switch (this) {
            case ISO_1994 -> ReferenceNoise.OCTAVES_HZ;
            case ISO_2018 ->
                ReferenceNoise.OCTAVES_HZ.stream()
                        .filter(hz -> hz > LOWEST_OCTAVE_HZ)
                        .toList();
            case CFR -> NoiseReductionRating.FREQUENCIES_HZ;
        };
    }

    /**
     * {@return whether a rating may be computed without a frequency, where it was not measured}
     *
     * @param hz a test frequency, in Hz
     */
    public boolean isOptional(int hz) {
        return this == ISO_1994 && hz == LOWEST_OCTAVE_HZ;
    }

    private boolean sendsHalvesDown() {
        return this == CFR;
    }

    /**
     * {@return the value in whole decibels} Of exact halves only 40 CFR 211.207 says where they go; the others are
     * given upward.
     *
     * @param valueDb as computed, in dB
     */
    public double roundedDb(double valueDb) {
        double exact = withoutNoise(valueDb);
        return sendsHalvesDown() ? Math.ceil(exact - 0.5) : Math.floor(exact + 0.5);
    }

    /**
     * {@return whether a value is an exact half and the method does not say which way that goes}
     *
     * @param valueDb as computed, in dB
     */
    public boolean isOpen(double valueDb) {
        double exact = withoutNoise(valueDb);
        return !sendsHalvesDown() && exact - Math.floor(exact) == 0.5;
    }

    /**
     * Whether a computed value keeps a limit. Compared as computed; where the lower end is half of a figure's last printed
     * digit below it, an exact half there goes where the method sends it.
     *
     * @param valueDb as computed, in dB
     * @param limit in dB
     * @return whether it does
     */
    public boolean meets(double valueDb, Interval limit) {
        double value = withoutNoise(valueDb);
        double lower = withoutNoise(limit.lower());
        Interval exact =
                new Interval(lower, withoutNoise(limit.upper()), limit.lowerOpen(), limit.upperOpen(), limit.unit());
        return exact.contains(value) && !(sendsHalvesDown() && value == lower && isOfRounding(limit));
    }

    /** A figure without decimals reaches a whole decibel, one with a decimal a tenth; {@code at least} leaves one end. */
    private static boolean isOfRounding(Interval limit) {
        double width = withoutNoise(limit.upper() - limit.lower());
        boolean half = withoutNoise(limit.lower()) - Math.floor(withoutNoise(limit.lower())) == 0.5;
        return limit.hasUpper() ? width == 1 || width == 0.1 : half;
    }

    /** Sums of binary fractions fall a hair beside the half that they mean. */
    private static double withoutNoise(double valueDb) {
        return Math.rint(valueDb * NOISE) / NOISE;
    }
}
