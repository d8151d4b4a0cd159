package org.ellwand.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A piece of a YAML file that knows where it stands. Scalars are the text that was written, whatever it looks like. */
public sealed interface YamlNode {
    /** {@return where it begins} */
    Place place();

    /**
     * {@return what it is, as messages say it} One of {@code text}, {@code nothing}, {@code a list}, {@code a mapping}.
     */
    String kind();

    /**
     * One value; empty where nothing was written.
     *
     * @param text as written, without quotation marks
     * @param place where it begins
     */
    record Scalar(String text, Place place) implements YamlNode {
        @Override
        public String kind() {
            return text.isEmpty() ? "nothing" : "text";
        }
    }

    /**
     * A list, in the order of the file.
     *
     * @param items its nodes
     * @param place where it begins
     */
    record Sequence(List<YamlNode> items, Place place) implements YamlNode {
        /**
         * Keeps a copy of the items.
         *
         * @param items its nodes
         * @param place where it begins
         */
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /**
     * A key with its place and what stands under it.
     *
     * @param key as written
     * @param keyPlace where the key begins
     * @param value what stands under it; an empty scalar where nothing does
     */
    record Entry(String key, Place keyPlace, YamlNode value) {}

    /**
     * A mapping, in the order of the file.
     *
     * @param entries no key twice
     * @param place where it begins
     */
    record Mapping(List<Entry> entries, Place place) implements YamlNode {
        /**
         * Keeps a copy of the entries.
         *
         * @param entries no key twice
         * @param place where it begins
         */
        public Mapping {
            entries = List.copyOf(entries);
        }

        @Override
        public String kind() {
            return "a mapping";
        }

        /**
         * {@return the node under a key; empty where the key is absent}
         *
         * @param key the key
         */
        public Optional<YamlNode> get(String key) {
            return entry(key).map(Entry::value);
        }

        /**
         * {@return the entry of a key; empty where the key is absent}
         *
         * @param key the key
         */
        public Optional<Entry> entry(String key) {
            return entries.stream().filter(e -> e.key().equals(key)).findFirst();
        }

        /**
         * {@return whether an entry is what a comma cut off the value before it} It then has no value of its own and stands
         * in the same line, as only between braces.
         *
         * @param at its place among the entries
         */
        public boolean isCut(int at) {
            return at > 0
                    && entries.get(at).value() instanceof Scalar value
                    && value.text().isEmpty()
                    && entries.get(at - 1).keyPlace().line()
                            == entries.get(at).keyPlace().line();
        }

        /** {@return the entries whose values are text, in order} */
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
