package org.ellwand.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ellwand.input.Place;
import org.ellwand.input.YamlNode;

/**
 * The keys of one rule with what stands under them, before they are understood.
 *
 * <p>A key is the rule's own, or it is borrowed: from the file's {@code assumed}, or, for another interpretation, from
 * the plain rule. A borrowed key that this rule cannot use is left out; an own one is an error.
 */
record Given(Map<String, Item> items, Place place) {
    record Item(YamlNode.Entry entry, boolean own) {}

    static Given of(Place place) {
        return new Given(new LinkedHashMap<>(), place);
    }

    /** These keys with others that override them. */
    Given with(List<YamlNode.Entry> entries, boolean own) {
        Map<String, Item> all = new LinkedHashMap<>(items);
        entries.forEach(entry -> {
            all.remove(entry.key()); // So that what overrides stands in its own order.
            all.put(entry.key(), new Item(entry, own));
        });
        return new Given(all, place);
    }

    /** These keys as another interpretation at another place borrows them. */
    Given borrowed(Place by) {
        Given all = of(by);
        return all.with(entries(), false);
    }

    /** These keys, and those of others that they lack. */
    Given filledBy(List<YamlNode.Entry> others) {
        return with(
                others.stream().filter(entry -> !items.containsKey(entry.key())).toList(), false);
    }

    Given without(String key) {
        Map<String, Item> rest = new LinkedHashMap<>(items);
        rest.remove(key);
        return new Given(rest, place);
    }

    List<YamlNode.Entry> entries() {
        return items.values().stream().map(Item::entry).collect(Collectors.toCollection(ArrayList::new));
    }

    Optional<Item> item(String key) {
        return Optional.ofNullable(items.get(key));
    }

    Optional<YamlNode> value(RuleKey key) {
        return item(key.text()).map(item -> item.entry().value());
    }

    /** The text under a key, where it is a text: for looking ahead; nothing is noted. */
    Optional<String> glance(RuleKey key) {
        return value(key)
                .filter(YamlNode.Scalar.class::isInstance)
                .map(node -> ((YamlNode.Scalar) node).text().strip());
    }

    Place place(RuleKey key) {
        return value(key).map(YamlNode::place).orElse(place);
    }

    boolean has(RuleKey key) {
        return items.containsKey(key.text());
    }
}
