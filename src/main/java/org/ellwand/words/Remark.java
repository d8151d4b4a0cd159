package org.ellwand.words;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Something said of a result: why a verdict is not firmer, why a reading was not used, what a reader must know. It is a key
 * with figures; {@link Sentences} words it.
 *
 * @param key stable, e.g. {@code missing-bands}
 * @param figures numbers, {@link Measure}s, texts, other remarks, and lists of these, by name
 */
public record Remark(String key, SortedMap<String, Object> figures) implements Comparable<Remark> {
    /**
     * Keeps a copy of the figures.
     *
     * @param key stable, e.g. {@code missing-bands}
     * @param figures numbers, {@link Measure}s, texts, other remarks, and lists of these, by name
     */
    public Remark {
        figures = Collections.unmodifiableSortedMap(new TreeMap<>(figures));
    }

    /**
     * {@return a remark without figures}
     *
     * @param key one that {@link Sentences} words
     */
    public static Remark of(String key) {
        return new Remark(key, new TreeMap<>());
    }

    /**
     * {@return the same with one figure more}
     *
     * @param name of the figure, as the sentence names it
     * @param figure a number, a {@link Measure}, a text, another remark, or a list of these
     */
    public Remark with(String name, Object figure) {
        TreeMap<String, Object> more = new TreeMap<>(figures);
        more.put(name, figure instanceof Collection<?> several ? List.copyOf(several) : figure);
        return new Remark(key, more);
    }

    /**
     * {@return the remark in English, without a full stop}
     *
     * @throws IllegalStateException where no sentence has this key
     */
    public String text() {
        return Sentences.english().of(this);
    }

    /**
     * {@return several remarks in English, in their order}
     *
     * @param remarks with keys that have sentences
     */
    public static List<String> texts(List<Remark> remarks) {
        return remarks.stream().map(Remark::text).toList();
    }

    /** By the English text. */
    @Override
    public int compareTo(Remark other) {
        if (equals(other)) {
            return 0;
        }
        int byText = text().compareTo(other.text());
        return byText != 0 ? byText : toString().compareTo(other.toString());
    }
}
