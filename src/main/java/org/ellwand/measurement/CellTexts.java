package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.List;

/** Numbers the distinct texts of one column, so that a repeated one is neither copied nor read again. */
final class CellTexts {
    private final List<String> texts = new ArrayList<>(List.of(""));
    private int[] slots = new int[64];
    private int last;

    /** The number of a cell's text; 0 is the empty text, new texts count up. */
    int id(SheetRow row, int cell) {
        if (row.isEmpty(cell)) {
            return 0;
        }
        if (!isAt(last, row, cell)) {
            last = find(row, cell);
        }
        return last;
    }

    String text(int id) {
        return texts.get(id);
    }

    /** How many numbers were given out. */
    int size() {
        return texts.size();
    }

    private int find(SheetRow row, int cell) {
        int slot = hash(row.chars(), row.start(cell), row.end(cell)) & (slots.length - 1);
        while (slots[slot] != 0) {
            if (isAt(slots[slot], row, cell)) {
                return slots[slot];
            }
            slot = (slot + 1) & (slots.length - 1);
        }
        slots[slot] = texts.size();
        texts.add(row.text(cell));
        int id = texts.size() - 1;
        growWhenHalfFull();
        return id;
    }

    private boolean isAt(int id, SheetRow row, int cell) {
        String text = texts.get(id);
        int start = row.start(cell);
        if (text.length() != row.end(cell) - start) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) != row.chars()[start + i]) {
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
            char[] chars = texts.get(id).toCharArray();
            int slot = hash(chars, 0, chars.length) & (slots.length - 1);
            while (slots[slot] != 0) {
                slot = (slot + 1) & (slots.length - 1);
            }
            slots[slot] = id;
        }
    }

    private static int hash(char[] chars, int from, int to) {
        int hash = 1;
        for (int i = from; i < to; i++) {
            hash = 31 * hash + chars[i];
        }
        return hash ^ (hash >>> 15);
    }
}
