package org.ellwand.input;

/**
 * One thing wrong with the input: where, what was found, and what is accepted there.
 *
 * @param place where it is
 * @param text what was found may be as long as a file: of a longer text than {@link #LONGEST} characters the middle is
 *     left out
 */
public record Problem(Place place, String text) implements Comparable<Problem> {
    /** Characters of what is told. */
    public static final int LONGEST = 2000;

    private static final int END = 500;

    /**
     * Leaves out the middle of a text that is longer than {@link #LONGEST}.
     *
     * @param place where it is
     * @param text what was found may be as long as a file: of a longer text than {@link #LONGEST} characters the middle
     *     is left out
     */
    public Problem {
        text = text.length() <= LONGEST ? text : shortened(text);
    }

    private static String shortened(String text) {
        String beginning = text.substring(0, LONGEST - END);
        String end = text.substring(text.length() - END);
        return beginning + " ... (" + (text.length() - LONGEST) + " characters left out) ... " + end;
    }

    @Override
    public int compareTo(Problem other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return place + ": " + text;
    }
}
