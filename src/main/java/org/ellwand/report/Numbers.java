package org.ellwand.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;

/**
 * Numbers as people read them, with a true minus sign (U+2212), and as machines do.
 *
 * <p>Levels in dB have one decimal. A rounded number never tells another story than the number itself: where rounding
 * would carry a value over the end of its limit, or a probability over the confidence, digits are added.
 */
final class Numbers {
    private static final int MOST_DECIMALS = 4;
    /** So many digits or more has what was worked out. */
    private static final int LONG = 15;
    /** So many digits tell any double from its neighbours. */
    private static final int LONGEST = 17;

    private static final double TWO_TO_52 = 0x1p52;

    private Numbers() {}

    static String fixed(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
        return signed(rounded.signum() == 0 ? rounded.abs() : rounded);
    }

    static String significant(double value, int digits) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        if (rounded.signum() == 0) {
            return "0";
        }
        int decimals = digits - (rounded.precision() - rounded.scale());
        return signed(rounded.setScale(Math.max(decimals, 0), RoundingMode.HALF_UP));
    }

    /** A measured value: one decimal for dB, else three significant digits; more where a limit's end is near. */
    static String value(double value, Unit unit, Interval limit) {
        int decimals = isDecibel(unit) ? 1 : decimalsOfThreeDigits(value);
        while (decimals < MOST_DECIMALS && !sameSide(value, decimals, limit)) {
            decimals++;
        }
        return fixed(value, decimals);
    }

    /** A value that is held against nothing. */
    static String value(double value, Unit unit) {
        return fixed(value, isDecibel(unit) ? 1 : decimalsOfThreeDigits(value));
    }

    /** Expanded uncertainty U = 2 u, two significant digits. */
    static String expanded(double standardUncertainty) {
        return significant(2 * standardUncertainty, 2);
    }

    /** {@code 0.93}, {@code > 0.999}, {@code < 0.001}. */
    static String probability(double probability, double confidence) {
        if (probability > 0.999) {
            return "> 0.999";
        }
        if (probability < 0.001) {
            return "< 0.001";
        }
        int decimals = probability > 0.99 || probability < 0.01 ? 3 : 2;
        Interval enough = Interval.atLeast(confidence, Unit.NONE);
        while (decimals < MOST_DECIMALS && !sameSide(probability, decimals, enough)) {
            decimals++;
        }
        return fixed(probability, decimals);
    }

    static String hertz(double hz) {
        return hz >= 1000 ? plain(hz / 1000) + " kHz" : plain(hz) + " Hz";
    }

    /** As few digits as say the number, true minus sign. */
    static String plain(double value) {
        return exact(value).replace('-', '\u2212');
    }

    /** The fewest decimal digits that read back as the same double, the same on every Java release. */
    static String exact(double value) {
        BigDecimal whole = new BigDecimal(value);
        // What was worked out has no short form; then most lengths need not be tried. Beside a power of two lie unlike
        // gaps.
        boolean powerOfTwo = Math.abs(value) == Math.ulp(value) * TWO_TO_52;
        int digits = powerOfTwo || shortened(whole, LONG - 1).doubleValue() == value ? 1 : LONG;
        while (digits < LONGEST && shortened(whole, digits).doubleValue() != value) {
            digits++;
        }
        return text(shortened(whole, digits));
    }

    private static BigDecimal shortened(BigDecimal whole, int digits) {
        return whole.round(new MathContext(digits, RoundingMode.HALF_EVEN));
    }

    static String withUnit(String number, Unit unit) {
        return unit == Unit.NONE ? number : number + " " + unit.symbol();
    }

    static boolean isDecibel(Unit unit) {
        return unit.isLevel() || unit.dimension() == Dimension.LEVEL_DIFFERENCE || unit.dimension() == Dimension.SLOPE;
    }

    private static String text(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    private static boolean sameSide(double value, int decimals, Interval limit) {
        double rounded =
                new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
        return limit.contains(rounded) == limit.contains(value);
    }

    private static int decimalsOfThreeDigits(double value) {
        if (value == 0) {
            return 0;
        }
        int before = (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        return Math.min(MOST_DECIMALS, Math.max(0, 3 - before));
    }

    private static String signed(BigDecimal value) {
        return value.toPlainString().replace('-', '\u2212');
    }
}
