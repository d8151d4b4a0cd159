package org.ellwand.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A piece of a YAML file that knows where it stands. Scalars are the text that was written, whatever it looks like. */
public sealed interface YamlNode {
    Place place();

    /** What it is, as messages say it: {@code text}, {@code a list}, {@code a mapping}. */
    String kind();

    /** One value; empty where nothing was written. */
    record Scalar(String text, Place place) implements YamlNode {
        @Override
        public String kind() {
            return text.isEmpty() ? "nothing" : "text";
        }
    }

    record Sequence(List<YamlNode> items, Place place) implements YamlNode {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /** A key with its place and what stands under it. */
    record Entry(String key, Place keyPlace, YamlNode value) {}

    /** A mapping, in the order of the file. */
    record Mapping(List<Entry> entries, Place place) implements YamlNode {
        public Mapping {
            entries = List.copyOf(entries);
        }

        @Override
        public String kind() {
            return "a mapping";
        }

        public Optional<YamlNode> get(String key) {
            return entry(key).map(Entry::value);
        }

        public Optional<Entry> entry(String key) {
            return entries.stream().filter(e -> e.key().equals(key)).findFirst();
        }

        /** The entries whose values are text, in order. */
        public Map<String, String> texts() {
            Map<String, String> texts = new LinkedHashMap<>();
            entries.forEach(e -> {
                if (e.value() instanceof Scalar scalar) {
                    texts.put(e.key(), scalar.text());
                }
            });
            return texts;
        }
    }
}
