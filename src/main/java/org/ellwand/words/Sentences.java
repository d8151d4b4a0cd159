package org.ellwand.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ellwand.input.InputException;
import org.ellwand.input.Nearest;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;

/**
 * The sentences of remarks: a line {@code key = sentence} for each, in which {@code {name}} stands for the figure of that
 * name, and {@code {name,1}} for a number with one decimal. A name that has no figure, or an empty one, leaves nothing, nor the space before it. Lines that begin with # are
 * comments.
 */
public final class Sentences {
    /** Where the English ones stand among the templates. */
    public static final String FILE = "remarks.txt";

    /** Characters of a file of sentences. */
    public static final int LONGEST = 200_000;

    private static final Pattern FIGURE = Pattern.compile(" ?\\{([A-Za-z]+)(?:,([0-9]))?}");
    private static final String RESOURCE = "/org/ellwand/templates/" + FILE;

    private final Map<String, String> patterns;

    private Sentences(Map<String, String> patterns) {
        this.patterns = patterns;
    }

    private static final class English {
        static final Sentences SENTENCES = load();

        private static Sentences load() {
            try (InputStream file = Sentences.class.getResourceAsStream(RESOURCE)) {
                if (file == null) {
                    throw new IllegalStateException("the program lacks its sentences: " + RESOURCE);
                }
                Map<String, String> patterns = new LinkedHashMap<>();
                String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
                text.lines().filter(Sentences::says).forEach(line -> patterns.put(key(line), sentence(line)));
                return new Sentences(patterns);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** {@return those that ship with the program} */
    public static Sentences english() {
        return English.SENTENCES;
    }

    /**
     * These with some replaced.
     *
     * @param file name of the file in messages
     * @param text its lines, as those of the English file
     * @return these, with those of the text instead of their own
     * @throws InputException where a line has no key, an unknown one, or names a figure that its sentence does not have
     */
    public Sentences with(String file, String text) throws InputException {
        if (text.length() > LONGEST) {
            throw new InputException(Place.ofFile(file), "longer than " + LONGEST + " characters");
        }
        Map<String, String> replaced = new LinkedHashMap<>(patterns);
        Problems problems = new Problems();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (says(lines.get(i))) {
                Place place = new Place(file, i + 1, 1);
                fault(lines.get(i)).ifPresent(what -> problems.add(place, what));
                replaced.put(key(lines.get(i)), sentence(lines.get(i)));
            }
        }
        problems.throwIfAny();
        return new Sentences(replaced);
    }

    private Optional<String> fault(String line) {
        String english = patterns.get(key(line));
        if (line.indexOf('=') < 0) {
            return Optional.of("a line is 'key = sentence'");
        }
        if (english == null) {
            return Optional.of(
                    "no remark has the key '" + key(line) + "'" + Nearest.hint(key(line), patterns.keySet()));
        }
        Set<String> known = figures(english);
        return figures(sentence(line)).stream()
                .filter(name -> !known.contains(name))
                .findFirst()
                .map(name -> "'" + key(line) + "' has no figure '" + name + "'; "
                        + (known.isEmpty() ? "it has none" : "there is " + String.join(", ", known)));
    }

    private static Set<String> figures(String pattern) {
        return FIGURE.matcher(pattern)
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** {@return the keys that have a sentence} */
    public Set<String> keys() {
        return patterns.keySet();
    }

    /**
     * {@return what a remark says, without a full stop}
     *
     * @param remark with a key that has a sentence
     * @throws IllegalStateException where no sentence has this key
     */
    public String of(Remark remark) {
        String pattern = Optional.ofNullable(patterns.get(remark.key()))
                .orElseThrow(() -> new IllegalStateException("no sentence for '" + remark.key() + "'"));
        return filled(pattern, remark.figures());
    }

    private String filled(String pattern, Map<String, Object> figures) {
        Matcher matcher = FIGURE.matcher(pattern);
        StringBuilder text = new StringBuilder();
        while (matcher.find()) {
            String figure =
                    figure(Optional.ofNullable(figures.get(matcher.group(1))).orElse(""), decimals(matcher));
            String space = matcher.group().startsWith(" ") && !figure.isEmpty() ? " " : "";
            matcher.appendReplacement(text, Matcher.quoteReplacement(space + figure));
        }
        return matcher.appendTail(text).toString();
    }

    private static OptionalInt decimals(Matcher matcher) {
        return Optional.ofNullable(matcher.group(2))
                .map(Integer::parseInt)
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    private String figure(Object figure, OptionalInt decimals) {
        return decimals.isPresent() && figure instanceof Number number
                ? Figures.fixed(number.doubleValue(), decimals.getAsInt())
                : figure(figure);
    }

    /**
     * {@return how the figure of a remark is printed}
     *
     * @param figure a number, a {@link Measure}, a text, a remark, or a list of these
     */
    public String figure(Object figure) {
        if (figure instanceof Remark remark) {
            return of(remark);
        }
        if (figure instanceof Collection<?> several && several.stream().anyMatch(Remark.class::isInstance)) {
            return several.stream().map(this::figure).collect(Collectors.joining("; "));
        }
        return Figures.text(figure);
    }

    private static boolean says(String line) {
        return !line.isBlank() && !line.startsWith("#");
    }

    private static String key(String line) {
        int end = line.indexOf('=');
        return (end < 0 ? line : line.substring(0, end)).strip();
    }

    private static String sentence(String line) {
        return line.substring(line.indexOf('=') + 1).strip();
    }
}
