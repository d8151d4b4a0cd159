package org.ellwand.input;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Walks a mapping and reports what does not belong there or has the wrong form. */
public final class Fields {
    private final YamlNode.Mapping mapping;
    private final Problems problems;

    public Fields(YamlNode.Mapping mapping, Problems problems) {
        this.mapping = mapping;
        this.problems = problems;
    }

    /** A node as fields; anything but a mapping is a problem and reads as an empty one. */
    public static Fields of(YamlNode node, String what, Problems problems) {
        if (node instanceof YamlNode.Mapping mapping) {
            return new Fields(mapping, problems);
        }
        problems.add(node.place(), what + ": a mapping of keys and values is expected, not " + node.kind());
        return new Fields(new YamlNode.Mapping(List.of(), node.place()), problems);
    }

    public YamlNode.Mapping mapping() {
        return mapping;
    }

    public Place place() {
        return mapping.place();
    }

    /** Reports every key that is not accepted, with the nearest one and all of them. */
    public void refuseUnknown(String what, Collection<String> accepted) {
        for (YamlNode.Entry entry : mapping.entries()) {
            if (!accepted.contains(entry.key())) {
                problems.add(entry.keyPlace(), unknown(what, entry.key(), accepted));
            }
        }
    }

    /** The message about a key that is not accepted. */
    public static String unknown(String what, String key, Collection<String> accepted) {
        return what + ": unknown key '" + key + "'" + Nearest.hint(key, accepted) + "; accepted are "
                + String.join(", ", new TreeSet<>(accepted));
    }

    public boolean has(String key) {
        return mapping.get(key).isPresent();
    }

    /** The place of a key, or of the mapping where it is not there. */
    public Place placeOf(String key) {
        return mapping.entry(key).map(YamlNode.Entry::keyPlace).orElse(mapping.place());
    }

    /** The place of a key's value, or of the mapping where it is not there. */
    public Place valuePlace(String key) {
        return mapping.get(key).map(YamlNode::place).orElse(mapping.place());
    }

    /** A text; nothing where the key is absent, empty or not text (the last two are problems). */
    public Optional<String> text(String key) {
        return mapping.get(key).flatMap(node -> textOf(key, node));
    }

    private Optional<String> textOf(String key, YamlNode node) {
        if (node instanceof YamlNode.Scalar scalar && !scalar.text().isBlank()) {
            return Optional.of(scalar.text());
        }
        problems.add(node.place(), "'" + key + "': a text is expected, not " + node.kind());
        return Optional.empty();
    }

    /** A text that must be there; {@code why} ends the message. */
    public Optional<String> required(String key, String why) {
        if (!has(key)) {
            problems.add(place(), "'" + key + "' is missing: " + why);
        }
        return text(key);
    }

    /** A mapping under a key; empty where the key is absent. */
    public Optional<Fields> fields(String key) {
        return mapping.get(key).map(node -> of(node, "'" + key + "'", problems));
    }

    /** The items under a key; a single item may stand without a list's brackets. */
    public List<YamlNode> items(String key) {
        return mapping.get(key)
                .map(node -> node instanceof YamlNode.Sequence list ? list.items() : List.of(node))
                .orElse(List.of());
    }

    /** The items of a list under a key; anything but a list is a problem. */
    public List<YamlNode> list(String key) {
        Optional<YamlNode> node = mapping.get(key);
        if (node.isPresent() && !(node.get() instanceof YamlNode.Sequence)) {
            problems.add(
                    node.get().place(),
                    "'" + key + "': a list is expected, not " + node.get().kind());
            return List.of();
        }
        return items(key);
    }

    /** One text or a list of texts. */
    public List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        items(key).forEach(item -> textOf(key, item).ifPresent(texts::add));
        return List.copyOf(texts);
    }

    /** A mapping of names to texts. */
    public Map<String, String> textMap(String key) {
        return fields(key)
                .map(f -> {
                    f.mapping.entries().forEach(e -> f.textOf(e.key(), e.value()));
                    return f.mapping.texts();
                })
                .orElse(Map.of());
    }
}
