package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.ellwand.amount.Amount;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.input.Fields;
import org.ellwand.input.Nearest;
import org.ellwand.input.Place;
import org.ellwand.input.YamlNode;

/**
 * A mapping of a session file, read key by key. What is wrong is reported and then treated as absent, so that reading
 * goes on.
 */
record Keys(YamlNode.Mapping mapping, Found problems) {
    /** A node as a mapping; reports it where it is none. */
    static Optional<Keys> of(YamlNode node, String what, Found problems) {
        if (node instanceof YamlNode.Mapping mapping) {
            return Optional.of(new Keys(mapping, problems));
        }
        problems.add(node.place(), what + " is a mapping of keys and values here, not " + node.kind());
        return Optional.empty();
    }

    Place place() {
        return mapping.place();
    }

    boolean has(String key) {
        return mapping.entry(key).isPresent();
    }

    /** Where a key's value stands. */
    Place placeOf(String key) {
        return mapping.get(key).map(YamlNode::place).orElse(place());
    }

    Place placeOfKey(String key) {
        return mapping.entry(key).map(YamlNode.Entry::keyPlace).orElse(place());
    }

    void onlyKnown(String what, Collection<String> known) {
        List<YamlNode.Entry> entries = mapping.entries();
        for (int at = 0; at < entries.size(); at++) {
            YamlNode.Entry entry = entries.get(at);
            if (!known.contains(entry.key())) {
                problems.add(
                        entry.keyPlace(),
                        mapping.isCut(at) ? Fields.cut(entry.key()) : unknown(what, entry.key(), known));
            }
        }
    }

    private static String unknown(String what, String key, Collection<String> known) {
        return "'" + key + "' is no key of " + what + Nearest.hint(key, known) + "; accepted are "
                + String.join(", ", known);
    }

    /** Reports a key that is needed and absent. */
    void need(String key, String why) {
        if (!has(key)) {
            problems.add(place(), "'" + key + "' is missing: " + why);
        }
    }

    Optional<String> text(String key) {
        return mapping.get(key).flatMap(node -> text(key, node));
    }

    private Optional<String> text(String key, YamlNode node) {
        if (node instanceof YamlNode.Scalar scalar && !scalar.text().isBlank()) {
            return Optional.of(scalar.text().strip());
        }
        problems.add(node.place(), "'" + key + "' is a text, not " + node.kind());
        return Optional.empty();
    }

    /** A key whose value is one of some words. */
    <T> Optional<T> choice(String key, Map<String, T> words) {
        Optional<String> text = text(key);
        if (text.isPresent() && !words.containsKey(text.get())) {
            problems.add(placeOf(key), notAccepted(key, text.get(), words.keySet()));
        }
        return text.map(words::get);
    }

    private static String notAccepted(String key, String text, Set<String> words) {
        String accepted = words.size() == 1 ? "; accepted is " : "; accepted are ";
        return "'" + key + ": " + text + "' is not accepted" + Nearest.hint(text, words) + accepted
                + String.join(", ", words);
    }

    /** A list; a single value counts as a list of one. */
    List<YamlNode> list(String key) {
        Optional<YamlNode> node = mapping.get(key);
        if (node.isPresent() && node.get() instanceof YamlNode.Sequence sequence) {
            return sequence.items();
        }
        return node.map(List::of).orElse(List.of());
    }

    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        list(key).forEach(node -> text(key, node).ifPresent(texts::add));
        return texts;
    }

    Optional<Keys> mapping(String key) {
        return mapping.get(key).flatMap(node -> of(node, "'" + key + "'", problems));
    }

    /** The mappings of a list. */
    List<Keys> mappings(String key) {
        List<Keys> all = new ArrayList<>();
        list(key)
                .forEach(node ->
                        of(node, "each entry of '" + key + "'", problems).ifPresent(all::add));
        return all;
    }

    /**
     * A number with a unit.
     *
     * @param right which units are accepted
     * @param expected what is accepted, for a message: {@code a level such as '94 dB SPL'}
     */
    Optional<Amount> amount(String key, Predicate<Unit> right, String expected) {
        return mapping.get(key).flatMap(node -> amount(key, node, right, expected));
    }

    Optional<Amount> amount(String key, YamlNode node, Predicate<Unit> right, String expected) {
        Optional<String> text = text(key, node);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            Amount amount = Phrases.amount(text.get());
            if (right.test(amount.unit())) {
                return Optional.of(amount);
            }
            problems.add(node.place(), "'" + key + ": " + text.get() + "': expected " + expected);
        } catch (PhraseException e) {
            problems.add(node.place(), "'" + key + "': " + e.getMessage() + "; expected " + expected);
        }
        return Optional.empty();
    }

    /** A whole number of at least 1. */
    Optional<Integer> count(String key) {
        Optional<String> text = text(key);
        if (text.isPresent() && !text.get().matches("[1-9]\\d{0,6}")) {
            problems.add(placeOf(key), "'" + key + ": " + text.get() + "': expected a whole number, 1 or more");
            return Optional.empty();
        }
        return text.map(Integer::valueOf);
    }

    /** The values of those keys that are conditions; {@code product} names the device where nothing else does. */
    SortedMap<String, String> conditions(Set<String> names) {
        SortedMap<String, String> conditions = new TreeMap<>();
        for (YamlNode.Entry entry : mapping.entries()) {
            if (names.contains(entry.key())) {
                text(entry.key(), entry.value()).ifPresent(value -> conditions.put(entry.key(), value));
            }
        }
        text("product").ifPresent(product -> conditions.putIfAbsent(ConditionNames.DEVICE, product));
        return conditions;
    }
}
