package org.ellwand.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.stream.Collectors;

/** Numbers in sentences: plain decimals, no trailing zeros, a true minus sign. */
public final class Figures {
    private static final char MINUS = '\u2212';
    private static final int DECIMALS = 2;

    private Figures() {}

    /**
     * {@return the number as written, without an exponent: 31.5, 125, 0.25}
     *
     * @param value finite
     */
    public static String plain(double value) {
        return signed(new BigDecimal(Double.toString(value)));
    }

    /**
     * {@return the number with at most so many decimals, rounded half to even}
     *
     * @param value finite
     * @param decimals digits behind the point, 0 or more
     */
    public static String rounded(double value, int decimals) {
        return signed(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** So many decimals, zeros too: 6.0, 0.25. */
    static String fixed(double value, int decimals) {
        BigDecimal exact = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return (exact.signum() == 0 ? exact.abs() : exact).toPlainString().replace('-', MINUS);
    }

    /**
     * {@return the number with two decimals, and two digits at least} As 17.53, 0.52, 0.0042.
     *
     * @param value finite
     */
    public static String rounded(double value) {
        BigDecimal exact = new BigDecimal(value);
        BigDecimal two = exact.round(new MathContext(2, RoundingMode.HALF_EVEN));
        return signed(two.scale() > DECIMALS ? two : exact.setScale(DECIMALS, RoundingMode.HALF_EVEN));
    }

    private static String signed(BigDecimal value) {
        BigDecimal stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return stripped.toPlainString().replace('-', MINUS);
    }

    /**
     * {@return a frequency in words} As {@code 125 Hz}, {@code 8 kHz}: kilohertz from 1000 Hz on.
     *
     * @param hz in Hz
     */
    public static String frequency(double hz) {
        return hz >= 1000 ? plain(hz / 1000) + " kHz" : plain(hz) + " Hz";
    }

    /** How the figure of a remark is printed: fractions rounded, lists with commas. */
    static String text(Object figure) {
        if (figure instanceof Double number) {
            return number == Math.rint(number) ? plain(number) : rounded(number);
        }
        if (figure instanceof Collection<?> several) {
            return several.stream().map(Figures::text).collect(Collectors.joining(", "));
        }
        return figure.toString();
    }
}
