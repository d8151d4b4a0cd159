package org.ellwand.measurement;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ellwand.amount.Unit;

/**
 * Reads the numbers of one sheet. A sheet whose separator is not a comma may have decimal commas; one sheet has commas or
 * points, not both, because {@code 1.250} beside {@code 65,3} might be a thousand.
 */
final class SheetNumbers {
    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };
    private static final int EXACT_DIGITS = 15;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,6})?");
    private static final Pattern NOT_FINITE = Pattern.compile("(?i)[+-]?(nan|inf|infinity|∞)");

    private static final String NO_FINITE_NUMBER = "is not a finite number";

    private final boolean commaAllowed;
    private char mark;
    private int markLine;
    private String fault = "";

    SheetNumbers(boolean commaAllowed) {
        this.commaAllowed = commaAllowed;
    }

    /** What was wrong with the last number read, empty where nothing was. */
    String fault() {
        return fault;
    }

    /** The number of a cell, NaN with a {@link #fault} where it is none. */
    double read(SheetRow row, int cell) {
        // A look is cheaper than setting a field in every row.
        if (!fault.isEmpty()) {
            fault = "";
        }
        char[] chars = row.cell(cell).chars();
        int end = row.cell(cell).length();
        int at = 0;
        boolean negative = at < end && isMinus(chars[at]);
        if (negative || (at < end && chars[at] == '+')) {
            at++;
        }
        long digits = 0;
        int count = 0;
        int decimals = 0;
        boolean behindMark = false;
        for (; at < end && count <= EXACT_DIGITS; at++) {
            char c = chars[at];
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
                count++;
                decimals += behindMark ? 1 : 0;
            } else if (!behindMark && isMark(c)) {
                behindMark = true;
                if (!agrees(c, row.line())) {
                    return Double.NaN;
                }
            } else {
                break;
            }
        }
        // Up to fifteen digits are exact in binary, so this quotient is the nearest number there is.
        return at == end && count > 0 && count <= EXACT_DIGITS
                ? (negative ? -digits : digits) / POWERS_OF_TEN[decimals]
                : readSlowly(row.text(cell));
    }

    /** Whether the numbers of two parts of one sheet have the same decimal mark, as far as they have one; it is kept. */
    boolean join(SheetNumbers other) {
        boolean same = mark == 0 || other.mark == 0 || mark == other.mark;
        mark = mark == 0 ? other.mark : mark;
        return same;
    }

    private static boolean isMinus(char c) {
        return c == '-' || c == '\u2212';
    }

    private boolean isMark(char c) {
        return c == '.' || (c == ',' && commaAllowed);
    }

    private boolean agrees(char c, int line) {
        if (mark == 0) {
            mark = c;
            markLine = line;
        } else if (mark != c) {
            fault = "has a decimal " + name(c) + ", but line " + markLine + " has a decimal " + name(mark)
                    + "; a sheet keeps to one of them";
        }
        return mark == c;
    }

    private static String name(char mark) {
        return mark == ',' ? "comma" : "point";
    }

    private double readSlowly(String text) {
        String plain = text.replace('\u2212', '-');
        if (commaAllowed) {
            plain = plain.replace(',', '.');
        }
        boolean number = NUMBER.matcher(plain).matches();
        double value = number ? Double.parseDouble(plain) : Double.NaN;
        if (!Double.isFinite(value)) {
            fault = number ? NO_FINITE_NUMBER : faultOf(plain);
            return Double.NaN;
        }
        return value;
    }

    private static String faultOf(String plain) {
        if (NOT_FINITE.matcher(plain).matches()) {
            return NO_FINITE_NUMBER;
        }
        if (NUMBER.matcher(plain.replace(',', '.')).matches()) {
            return "has a comma, but commas separate the cells here; numbers have a decimal point, and nothing between"
                    + " thousands";
        }
        Matcher begins = NUMBER.matcher(plain);
        boolean unit = begins.lookingAt()
                && Unit.spelled(plain.substring(begins.end()).strip()).isPresent();
        return unit ? "has its unit in the cell; it stands in the header" : "is not a number";
    }
}
