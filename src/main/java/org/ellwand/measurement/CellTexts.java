package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Numbers the distinct texts of one column, so that a repeated one is neither copied nor read again. */
final class CellTexts {
    private final List<String> texts = new ArrayList<>(List.of(""));
    private char[][] chars = {new char[0]};
    /** For each text, the one that came after it last: bands come in the same order in every reading. */
    private int[] next = {0};

    private int[] slots = new int[64];
    private int last;

    /** The number of a cell's text; 0 is the empty text, new texts count up. */
    int id(SheetCell cell) {
        if (cell.length() == 0) {
            return 0;
        }
        int expected = next[last];
        if (!isAt(expected, cell.chars(), cell.length())) {
            expected = find(cell.chars(), cell.length());
            next[last] = expected;
        }
        last = expected;
        return last;
    }

    /** The number of a text. */
    int id(String text) {
        return text.isEmpty() ? 0 : find(text.toCharArray(), text.length());
    }

    String text(int id) {
        return texts.get(id);
    }

    /** How many numbers were given out. */
    int size() {
        return texts.size();
    }

    private int find(char[] there, int length) {
        int slot = hash(there, length) & (slots.length - 1);
        while (slots[slot] != 0) {
            if (isAt(slots[slot], there, length)) {
                return slots[slot];
            }
            slot = (slot + 1) & (slots.length - 1);
        }
        return add(new String(there, 0, length), slot);
    }

    private int add(String text, int slot) {
        int id = texts.size();
        texts.add(text);
        if (id == chars.length) {
            chars = Arrays.copyOf(chars, 2 * id);
            next = Arrays.copyOf(next, 2 * id);
        }
        chars[id] = text.toCharArray();
        slots[slot] = id;
        growWhenHalfFull();
        return id;
    }

    private boolean isAt(int id, char[] there, int length) {
        char[] text = chars[id];
        if (text.length != length) {
            return false;
        }
        // From the end: names that count up differ there.
        for (int i = text.length - 1; i >= 0; i--) {
            if (text[i] != there[i]) {
                return false;
            }
        }
        return true;
    }

    private void growWhenHalfFull() {
        if (2 * texts.size() < slots.length) {
            return;
        }
        slots = new int[2 * slots.length];
        for (int id = 1; id < texts.size(); id++) {
            int slot = hash(chars[id], chars[id].length) & (slots.length - 1);
            while (slots[slot] != 0) {
                slot = (slot + 1) & (slots.length - 1);
            }
            slots[slot] = id;
        }
    }

    private static int hash(char[] chars, int length) {
        int hash = 1;
        for (int i = 0; i < length; i++) {
            hash = 31 * hash + chars[i];
        }
        return hash ^ (hash >>> 15);
    }
}
