package org.ellwand.input;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Walks a mapping: takes out what is accepted and notes what is not. A value that was noted as a problem is returned as
 * absent, so that reading goes on and everything is told at once; call {@link Problems#throwIfAny} before what was read
 * is used.
 */
public final class Fields {
    private final YamlNode.Mapping mapping;
    private final Problems problems;

    private Fields(YamlNode.Mapping mapping, Problems problems) {
        this.mapping = mapping;
        this.problems = problems;
    }

    /**
     * The fields of a node.
     *
     * @param node the node to walk
     * @param what the node, as messages say it: {@code an edition}
     * @param accepted the keys it may hold, in the order messages list them
     * @param problems takes what is wrong
     * @return empty where the node is no mapping
     */
    public static Optional<Fields> of(YamlNode node, String what, Collection<String> accepted, Problems problems) {
        Optional<Fields> fields = open(node, what, problems);
        fields.ifPresent(f -> f.refuseUnknown(accepted));
        return fields;
    }

    /**
     * The fields of a node whose keys its reader checks itself.
     *
     * @param node the node to walk
     * @param what the node, as messages say it
     * @param problems takes what is wrong
     * @return empty where the node is no mapping
     */
    public static Optional<Fields> open(YamlNode node, String what, Problems problems) {
        if (node instanceof YamlNode.Mapping mapping) {
            return Optional.of(new Fields(mapping, problems));
        }
        problems.add(node.place(), what + " is a mapping of keys to values, not " + node.kind());
        return Optional.empty();
    }

    private void refuseUnknown(Collection<String> accepted) {
        List<YamlNode.Entry> entries = mapping.entries();
        for (int at = 0; at < entries.size(); at++) {
            YamlNode.Entry entry = entries.get(at);
            if (!accepted.contains(entry.key())) {
                problems.add(
                        entry.keyPlace(), mapping.isCut(at) ? cut(entry.key()) : unknown("key", entry.key(), accepted));
            }
        }
    }

    /**
     * {@return the message about the rest of a value that a comma cut} As of {@code {limit: 18,5 dB}}.
     *
     * @param rest what stands behind the comma
     */
    public static String cut(String rest) {
        return "'" + rest + "' stands behind a comma, which ends a value here: write decimals with a point, and put"
                + " text with commas in quotes";
    }

    /**
     * {@return the message about an unknown word} As {@code unknown key 'statistc' (did you mean 'statistic'?):
     * accepted are bands, statistic}.
     *
     * @param what kind of word, as {@code key}
     * @param word as written
     * @param accepted the words that are accepted, in the order of the message
     */
    public static String unknown(String what, String word, Collection<String> accepted) {
        return "unknown " + what + " '" + word + "'" + Nearest.hint(word, accepted) + ": accepted are "
                + String.join(", ", accepted);
    }

    /** {@return where the mapping begins} */
    public Place place() {
        return mapping.place();
    }

    /** {@return keys and values in the order of the file} */
    public List<YamlNode.Entry> entries() {
        return mapping.entries();
    }

    /**
     * {@return whether the key was written, with a value or without}
     *
     * @param key the key
     */
    public boolean has(String key) {
        return mapping.entry(key).isPresent();
    }

    /**
     * {@return the place of a key's value; of the mapping where the key is absent}
     *
     * @param key the key
     */
    public Place place(String key) {
        return mapping.get(key).map(YamlNode::place).orElse(place());
    }

    /**
     * {@return the place of a key; of the mapping where it is absent}
     *
     * @param key the key
     */
    public Place keyPlace(String key) {
        return mapping.entry(key).map(YamlNode.Entry::keyPlace).orElse(place());
    }

    /**
     * {@return the node under a key; empty where the key is absent}
     *
     * @param key the key
     */
    public Optional<YamlNode> value(String key) {
        return mapping.get(key);
    }

    /**
     * A text that is not blank, without the blanks around it.
     *
     * @param key the key
     * @return empty where the key is absent, or its value was noted as a problem
     */
    public Optional<String> text(String key) {
        return value(key).flatMap(value -> text(key, value, problems));
    }

    /**
     * {@return a text that is not blank; that the key is absent is noted as a problem}
     *
     * @param key the key
     */
    public Optional<String> requiredText(String key) {
        return required(key) ? text(key) : Optional.empty();
    }

    /**
     * {@return the items of a list; none where the key is absent}
     *
     * @param key the key
     */
    public List<YamlNode> list(String key) {
        return value(key).map(value -> items(key, value)).orElse(List.of());
    }

    /**
     * The items of a list that must be there and hold something.
     *
     * @param key the key
     * @return the items; none where this was noted as a problem
     */
    public List<YamlNode> requiredList(String key) {
        if (value(key).filter(YamlNode.Sequence.class::isInstance).isPresent()
                && list(key).isEmpty()) {
            problems.add(place(key), "the list '" + key + "' is empty");
        }
        return required(key) ? list(key) : List.of();
    }

    private List<YamlNode> items(String key, YamlNode value) {
        if (value instanceof YamlNode.Sequence sequence) {
            return sequence.items();
        }
        problems.add(value.place(), "'" + key + "' takes a list, not " + value.kind() + ": each item begins with '- '");
        return List.of();
    }

    private boolean required(String key) {
        if (!has(key)) {
            problems.add(place(), "the key '" + key + "' is missing");
        }
        return has(key);
    }

    /**
     * A node as a text that is not blank; a problem where it is none.
     *
     * @param key the key, as messages name it
     * @param value the node under it
     * @param problems takes what is wrong
     * @return the text without the blanks around it; empty where a problem was noted
     */
    public static Optional<String> text(String key, YamlNode value, Problems problems) {
        if (value instanceof YamlNode.Scalar scalar && !scalar.text().isBlank()) {
            return Optional.of(scalar.text().strip());
        }
        problems.add(
                value.place(),
                value instanceof YamlNode.Scalar
                        ? "'" + key + "' is empty: give it a value or leave the key out"
                        : "'" + key + "' takes a text, not " + value.kind());
        return Optional.empty();
    }

    /**
     * A node as texts: a list of texts, or one text.
     *
     * @param key the key, as messages name it
     * @param value the node under it
     * @param problems takes what is wrong
     * @return the texts, those left out that were noted as problems
     */
    public static List<String> texts(String key, YamlNode value, Problems problems) {
        List<YamlNode> items = value instanceof YamlNode.Sequence sequence ? sequence.items() : List.of(value);
        if (items.isEmpty()) {
            problems.add(value.place(), "the list '" + key + "' is empty");
        }
        List<String> texts = new ArrayList<>();
        items.forEach(item -> text(key, item, problems).ifPresent(texts::add));
        return texts;
    }
}
