package org.ellwand.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in sentences: plain decimals, no trailing zeros, a true minus sign. */
final class Numbers {
    private static final char MINUS = '\u2212';

    private Numbers() {}

    /** The number as written, without an exponent: 31.5, 125, 0.25. */
    static String plain(double value) {
        return signed(new BigDecimal(Double.toString(value)));
    }

    /** At most so many decimals. */
    static String rounded(double value, int decimals) {
        return signed(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    private static String signed(BigDecimal value) {
        BigDecimal stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return stripped.toPlainString().replace('-', MINUS);
    }

    /** {@code 125 Hz}, {@code 8 kHz}. */
    static String frequency(double hz) {
        return hz >= 1000 ? plain(hz / 1000) + " kHz" : plain(hz) + " Hz";
    }
}
