package org.ellwand.input;

/** What parts the cells of a sheet: comma, semicolon or tab, as instruments and spreadsheets write them. */
public final class Separator {
    /** What is said of a row with more cells than its header, where commas separate them. */
    public static final String NO_DECIMAL_COMMAS =
            "; where numbers have decimal commas, semicolons or tabs separate the cells";

    private static final char[] CANDIDATES = {'\t', ';', ','};

    private Separator() {}

    /**
     * {@return the one of tab, semicolon and comma that a header line holds most of, quoted cells aside; a comma where it
     * holds none}
     *
     * @param header the line
     */
    public static char of(String header) {
        char most = ',';
        long count = 0;
        for (char candidate : CANDIDATES) {
            long found = countOutsideQuotes(header, candidate);
            if (found > count) {
                most = candidate;
                count = found;
            }
        }
        return most;
    }

    private static long countOutsideQuotes(String header, char wanted) {
        boolean quoted = false;
        long count = 0;
        for (int i = 0; i < header.length(); i++) {
            quoted ^= header.charAt(i) == '"';
            count += !quoted && header.charAt(i) == wanted ? 1 : 0;
        }
        return count;
    }
}
