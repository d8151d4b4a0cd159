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
    private static final double CHARACTER = 7.6;

    private Sheet() {}

    /** What a text of so many characters takes at most, but for wide ones. */
    static double textPx(int characters) {
        return characters * CHARACTER;
    }

    /** What names of at most so many characters take at the right of a plot. */
    static double namesPx(int characters) {
        return characters == 0 ? RIGHT : GAP + MARK + textPx(characters);
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

    static int longest(Collection<String> texts) {
        return texts.stream().mapToInt(String::length).max().orElse(0);
    }
}
