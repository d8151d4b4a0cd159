package org.ellwand.check;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a check has to say: a key with its numbers and names, so that a template can word it otherwise. The English sentence
 * of every key stands in {@code findings.properties} and nowhere else.
 *
 * @param key stable, e.g. {@code slit-leak}
 * @param figures numbers at full precision and names, by name
 */
record Told(String key, SortedMap<String, Object> figures) {
    private static final Properties SENTENCES = sentences();

    /** {@code {name}} is a text or a whole number, {@code {name,1}} a number with one decimal. */
    private static final Pattern FIGURE = Pattern.compile("\\{(\\w+)(?:,(\\d))?\\}");

    Told {
        figures = Collections.unmodifiableSortedMap(new TreeMap<>(figures));
    }

    /** Says it without numbers. */
    static Told of(String key) {
        return new Told(key, new TreeMap<>());
    }

    Told with(String name, double number) {
        return and(name, number);
    }

    Told with(String name, long number) {
        return and(name, number);
    }

    Told with(String name, String text) {
        return and(name, text);
    }

    private Told and(String name, Object figure) {
        SortedMap<String, Object> more = new TreeMap<>(figures);
        more.put(name, figure);
        return new Told(key, more);
    }

    /** The English sentence, without a full stop. */
    String text() {
        Matcher figure = FIGURE.matcher(Objects.requireNonNull(SENTENCES.getProperty(key), key));
        return figure.replaceAll(one -> Matcher.quoteReplacement(figure(one.group(1), one.group(2))));
    }

    @SuppressWarnings("NullAway") // The second group is null where no decimals are asked for.
    private String figure(String name, String decimals) {
        Object figure = Objects.requireNonNull(figures.get(name), () -> key + ": " + name);
        return decimals == null
                ? String.valueOf(figure)
                : String.format(Locale.ROOT, "%." + decimals + "f", ((Number) figure).doubleValue());
    }

    private static Properties sentences() {
        Properties sentences = new Properties();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(Told.class.getResourceAsStream("findings.properties")),
                StandardCharsets.UTF_8)) {
            sentences.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return sentences;
    }

    /** Every key with its sentence, for the guide to templates. */
    static Map<String, String> all() {
        Map<String, String> all = new TreeMap<>();
        SENTENCES.stringPropertyNames().forEach(key -> all.put(key, SENTENCES.getProperty(key, "")));
        return all;
    }
}
