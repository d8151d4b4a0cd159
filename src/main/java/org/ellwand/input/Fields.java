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
     * @param what the node, as messages say it: {@code an edition}
     * @param accepted the keys it may hold, in the order messages list them
     * @return empty where the node is no mapping
     */
    public static Optional<Fields> of(YamlNode node, String what, Collection<String> accepted, Problems problems) {
        Optional<Fields> fields = open(node, what, problems);
        fields.ifPresent(f -> f.refuseUnknown(accepted));
        return fields;
    }

    /** The fields of a node whose keys its reader checks itself. */
    public static Optional<Fields> open(YamlNode node, String what, Problems problems) {
        if (node instanceof YamlNode.Mapping mapping) {
            return Optional.of(new Fields(mapping, problems));
        }
        problems.add(node.place(), what + " is a mapping of keys to values, not " + node.kind());
        return Optional.empty();
    }

    private void refuseUnknown(Collection<String> accepted) {
        mapping.entries().stream()
                .filter(entry -> !accepted.contains(entry.key()))
                .forEach(entry -> problems.add(entry.keyPlace(), unknown("key", entry.key(), accepted)));
    }

    /** {@code unknown key 'statistc' (did you mean 'statistic'?): accepted are bands, statistic}. */
    public static String unknown(String what, String word, Collection<String> accepted) {
        return "unknown " + what + " '" + word + "'" + Nearest.hint(word, accepted) + ": accepted are "
                + String.join(", ", accepted);
    }

    public Place place() {
        return mapping.place();
    }

    public List<YamlNode.Entry> entries() {
        return mapping.entries();
    }

    public boolean has(String key) {
        return mapping.entry(key).isPresent();
    }

    /** Place of a key's value; of the mapping where the key is absent. */
    public Place place(String key) {
        return mapping.get(key).map(YamlNode::place).orElse(place());
    }

    /** Place of a key; of the mapping where it is absent. */
    public Place keyPlace(String key) {
        return mapping.entry(key).map(YamlNode.Entry::keyPlace).orElse(place());
    }

    public Optional<YamlNode> value(String key) {
        return mapping.get(key);
    }

    /** A text that is not blank, without the blanks around it. */
    public Optional<String> text(String key) {
        return value(key).flatMap(value -> text(key, value, problems));
    }

    public Optional<String> requiredText(String key) {
        return required(key) ? text(key) : Optional.empty();
    }

    /** The items of a list; none where the key is absent. */
    public List<YamlNode> list(String key) {
        return value(key).map(value -> items(key, value)).orElse(List.of());
    }

    /** The items of a list that must be there and hold something. */
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
        problems.add(value.place(), "'" + key + "' takes a list, not " + value.kind());
        return List.of();
    }

    private boolean required(String key) {
        if (!has(key)) {
            problems.add(place(), "the key '" + key + "' is missing");
        }
        return has(key);
    }

    /** A node as a text that is not blank; a problem where it is none. */
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

    /** A node as texts: a list of texts, or one text. */
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
