package org.ellwand.measurement;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** The conditions of a reading, by name: {@code session}, {@code ear}, {@code setting}, {@code stimulus}, … */
public record Conditions(SortedMap<String, String> values) {
    public Conditions {
        values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }

    public static Conditions of(Map<String, String> values) {
        return new Conditions(new TreeMap<>(values));
    }

    public Optional<String> get(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** These conditions with one more, or one replaced. */
    public Conditions with(String name, String value) {
        SortedMap<String, String> more = new TreeMap<>(values);
        more.put(name, value);
        return new Conditions(more);
    }

    public Conditions without(Set<String> names) {
        SortedMap<String, String> fewer = new TreeMap<>(values);
        fewer.keySet().removeAll(names);
        return new Conditions(fewer);
    }

    /** {@code ear=crew-01-left, setting=flood}: stable, for messages and as an identity. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        values.forEach((name, value) -> text.append(text.length() == 0 ? "" : ", ")
                .append(name)
                .append('=')
                .append(value));
        return text.toString();
    }
}
