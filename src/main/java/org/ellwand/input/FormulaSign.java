package org.ellwand.input;

import java.util.regex.Pattern;

/**
 * Texts in sheets that a spreadsheet would take for a formula: they are written with an apostrophe before them, as spreadsheets take
 * one to say that a text follows, and read without it.
 */
public final class FormulaSign {
    private static final char APOSTROPHE = '\'';
    private static final Pattern FORMULA = Pattern.compile("^\\s*[=+\\-@\\t\\r]");

    private FormulaSign() {}

    /**
     * {@return a text as it may stand in a sheet}
     *
     * @param text any
     */
    public static String guarded(String text) {
        return FORMULA.matcher(text).find() ? APOSTROPHE + text : text;
    }

    /**
     * {@return a text that stands in a sheet, without its guard}
     *
     * @param cell with or without one
     */
    public static String plain(String cell) {
        boolean guarded = cell.length() > 1
                && cell.charAt(0) == APOSTROPHE
                && FORMULA.matcher(cell.substring(1)).find();
        return guarded ? cell.substring(1) : cell;
    }
}
