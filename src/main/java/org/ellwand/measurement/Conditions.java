package org.ellwand.measurement;

import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The conditions of a reading, by name: {@code session}, {@code ear}, {@code setting}, {@code stimulus}, … They are few, and
 * of a lot's many readings they are asked for again and again: so they lie side by side in arrays.
 */
public final class Conditions {
    private final String[] names;
    private final String[] texts;
    private final int hash;

    public Conditions(SortedMap<String, String> values) {
        this(values.keySet().toArray(String[]::new), values.values().toArray(String[]::new));
    }

    private Conditions(String[] names, String[] texts) {
        this.names = names;
        this.texts = texts;
        this.hash = 31 * Arrays.hashCode(names) + Arrays.hashCode(texts);
    }

    public static Conditions of(Map<String, String> values) {
        return new Conditions(new TreeMap<>(values));
    }

    /** By name; a new map. */
    public SortedMap<String, String> values() {
        SortedMap<String, String> values = new TreeMap<>();
        for (int i = 0; i < names.length; i++) {
            values.put(names[i], texts[i]);
        }
        return Collections.unmodifiableSortedMap(values);
    }

    public Optional<String> get(String name) {
        for (int i = 0; i < names.length; i++) {
            if (names[i].equals(name)) {
                return Optional.of(texts[i]);
            }
        }
        return Optional.empty();
    }

    /** Whether a condition is there and says this. */
    public boolean has(String name, String text) {
        for (int i = 0; i < names.length; i++) {
            if (names[i].equals(name)) {
                return texts[i].equals(text);
            }
        }
        return false;
    }

    /** These conditions with one more, or one replaced. */
    public Conditions with(String name, String value) {
        SortedMap<String, String> more = new TreeMap<>(values());
        more.put(name, value);
        return new Conditions(more);
    }

    public Conditions without(Set<String> dropped) {
        String[] keptNames = new String[names.length];
        String[] keptTexts = new String[names.length];
        int kept = 0;
        for (int i = 0; i < names.length; i++) {
            if (!dropped.contains(names[i])) {
                keptNames[kept] = names[i];
                keptTexts[kept++] = texts[i];
            }
        }
        return kept == names.length
                ? this
                : new Conditions(Arrays.copyOf(keptNames, kept), Arrays.copyOf(keptTexts, kept));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Conditions those
                && hash == those.hash
                && Arrays.equals(names, those.names)
                && Arrays.equals(texts, those.texts);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    /** {@code ear=crew-01-left, setting=flood}: stable, for messages and as an identity. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(24 * names.length);
        for (int i = 0; i < names.length; i++) {
            text.append(i == 0 ? "" : ", ").append(names[i]).append('=').append(texts[i]);
        }
        return text.toString();
    }
}
