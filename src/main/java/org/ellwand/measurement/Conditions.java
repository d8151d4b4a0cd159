package org.ellwand.measurement;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The conditions of a reading, by name: {@code session}, {@code ear}, {@code setting}, {@code stimulus}, … They are few, and
 * of a lot's many readings they are asked for again and again: so their texts lie side by side, and their names are shared.
 */
public final class Conditions {
    private final NameList names;
    private final String[] texts;
    private final int hash;

    /**
     * Conditions by name.
     *
     * @param values texts by name; copied
     */
    public Conditions(SortedMap<String, String> values) {
        this(new NameList(values.keySet()), values.values().toArray(String[]::new));
    }

    /**
     * Conditions by name.
     *
     * @param names conditions that share the list are soon compared
     * @param texts in the order of the names; the conditions' own from now on
     */
    Conditions(NameList names, String[] texts) {
        this.names = names;
        this.texts = texts;
        this.hash = 31 * names.hashCode() + Arrays.hashCode(texts);
    }

    /**
     * {@return conditions by name}
     *
     * @param values texts by name, in any order; copied
     */
    public static Conditions of(Map<String, String> values) {
        return new Conditions(new TreeMap<>(values));
    }

    /** {@return the texts by name; a new map} */
    public SortedMap<String, String> values() {
        SortedMap<String, String> values = new TreeMap<>();
        for (int i = 0; i < texts.length; i++) {
            values.put(names.name(i), texts[i]);
        }
        return Collections.unmodifiableSortedMap(values);
    }

    /** {@return the names, sorted} */
    public Set<String> names() {
        return names.asSet();
    }

    /** {@return what the conditions say, in the order of their names} */
    public List<String> texts() {
        return List.of(texts);
    }

    /**
     * {@return what a condition says; empty where it is not there}
     *
     * @param name of the condition
     */
    public Optional<String> get(String name) {
        int place = names.place(name);
        return place < 0 ? Optional.empty() : Optional.of(texts[place]);
    }

    /**
     * {@return whether a condition is there and says this}
     *
     * @param name of the condition
     * @param text compared as written
     */
    public boolean has(String name, String text) {
        int place = names.place(name);
        return place >= 0 && texts[place].equals(text);
    }

    /**
     * {@return these conditions with one more, or one replaced}
     *
     * @param name of the condition
     * @param value what it says
     */
    public Conditions with(String name, String value) {
        int place = names.place(name);
        int at = place < 0 ? names.placeFor(name) : place;
        String[] more = new String[place < 0 ? texts.length + 1 : texts.length];
        System.arraycopy(texts, 0, more, 0, at);
        System.arraycopy(texts, at, more, more.length - texts.length + at, texts.length - at);
        more[at] = value;
        return new Conditions(place < 0 ? names.with(name) : names, more);
    }

    /**
     * {@return these conditions less some; names that are not there do no harm}
     *
     * @param dropped names
     */
    public Conditions without(Set<String> dropped) {
        return left(names.without(dropped));
    }

    /**
     * {@return those of these conditions that are named}
     *
     * @param kept names; those that are not there do no harm
     */
    public Conditions only(Set<String> kept) {
        return left(names.only(kept));
    }

    @SuppressWarnings("ReferenceEquality") // Where nothing is left out, the rest is the list itself.
    private Conditions left(NameList.Rest rest) {
        return rest.names() == names ? this : new Conditions(rest.names(), rest.of(texts));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Conditions those
                && hash == those.hash
                && names.equals(those.names)
                && Arrays.equals(texts, those.texts);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    /** {@code ear=crew-01-left, setting=flood}: stable, for messages and as an identity. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(24 * texts.length);
        for (int i = 0; i < texts.length; i++) {
            text.append(i == 0 ? "" : ", ").append(names.name(i)).append('=').append(texts[i]);
        }
        return text.toString();
    }
}
