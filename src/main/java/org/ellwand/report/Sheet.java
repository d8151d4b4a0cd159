package org.ellwand.report;

import java.util.Collection;

/**
 * What every figure is drawn on, px: all of one width, so that letters have one size on a page, and narrow enough that they
 * are still read at two thirds of it, which is what the screen of a telephone leaves.
 */
final class Sheet {
    static final double WIDTH = 500;
    static final double LEFT = 40;
    /** Above a plot: what its ordinate is, and what was claimed. */
    static final double TOP = 56;
    /** The same where there is but one of them. */
    static final double LOW_TOP = 36;

    static final double RIGHT = 16;
    /** From one label to the next below it. */
    static final double LINE = 15;
    /** From the end of a plot to the mark beside a name, and from there to the name. */
    static final double GAP = 12;

    private static final double MARK = 16;
    private static final String NARROW = "ijlft.,:;|!'()[]-/ ";
    private static final String WIDE = "mwMW@%";
    /** Where scripts begin whose letters are as wide as high. */
    private static final int SQUARE = 0x2E80;

    private Sheet() {}

    /** What a text takes at most, px: as wide as a wide sans serif (DejaVu Sans) sets its letters, in round numbers. */
    static double textPx(String text) {
        return text.codePoints().mapToDouble(Sheet::letterPx).sum();
    }

    private static double letterPx(int letter) {
        if (letter >= SQUARE) {
            return 13.5;
        }
        if (NARROW.indexOf(letter) >= 0) {
            return 5.2;
        }
        if (WIDE.indexOf(letter) >= 0) {
            return 12.9;
        }
        return Character.isUpperCase(letter) ? 9.7 : 8.3;
    }

    static double widestPx(Collection<String> texts) {
        return texts.stream().mapToDouble(Sheet::textPx).max().orElse(0);
    }

    /** What names take at the right of a plot with their marks; an edge where there are none. */
    static double namesPx(Collection<String> names) {
        double widest = widestPx(names);
        return widest == 0 ? RIGHT : GAP + MARK + widest;
    }

    /** A text cut to so many characters in its middle: names that begin alike often end otherwise. */
    static String shortened(String text, int characters) {
        int points = text.codePointCount(0, text.length());
        if (points <= characters) {
            return text;
        }
        int tail = characters / 2 - 1;
        return text.substring(0, text.offsetByCodePoints(0, characters - 1 - tail))
                + "…"
                + text.substring(text.offsetByCodePoints(0, points - tail));
    }
}
