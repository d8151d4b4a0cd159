package org.ellwand.measurement;

/**
 * A cell of the row at hand, trimmed. Most say the same as the one above, and it knows those. Cells are short: comparing and
 * copying them one character after the other is quicker than asking to have it done for whole arrays, and from the end, as
 * loops that count up are made ready for long ones.
 */
final class SheetCell {
    private static final int USUAL_LENGTH = 16;

    private char[] chars = new char[USUAL_LENGTH];
    private int length;
    private boolean kept;

    /** Its characters, up to its length. */
    char[] chars() {
        return chars;
    }

    int length() {
        return length;
    }

    /** What it says is remembered. */
    void keep() {
        kept = true;
    }

    /** Returns whether what was remembered is said no more; then it is forgotten. */
    boolean set(char[] from, int offset, int count) {
        if (kept && says(from, offset, count)) {
            return false;
        }
        if (count > chars.length) {
            chars = new char[2 * count];
        }
        char[] here = chars;
        for (int i = count - 1; i >= 0; i--) {
            here[i] = from[offset + i];
        }
        length = count;
        boolean forgotten = kept;
        kept = false;
        return forgotten;
    }

    private boolean says(char[] there, int offset, int count) {
        if (length != count) {
            return false;
        }
        char[] here = chars;
        for (int i = count - 1; i >= 0; i--) {
            if (here[i] != there[offset + i]) {
                return false;
            }
        }
        return true;
    }

    @Override
    public String toString() {
        return new String(chars, 0, length);
    }
}
