package org.ellwand.claim;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ellwand.input.Place;
import org.ellwand.input.YamlNode;

/**
 * The keys of one rule as they stand in the file, before they mean anything.
 *
 * @param name {@code plain}, or the name of another interpretation
 * @param values by key
 * @param own the keys that this rule wrote itself: one that it cannot use is an error, an inherited one is left out
 * @param stated keys the sentence fixes, as written
 * @param assumed keys the auditor added, as written
 * @param place where messages about the rule as a whole point
 */
record RuleSource(
        String name,
        Map<String, YamlNode> values,
        Set<String> own,
        Map<String, String> stated,
        Map<String, String> assumed,
        Place place) {

    boolean has(RuleKey key) {
        return values.containsKey(key.text());
    }

    Optional<YamlNode> node(RuleKey key) {
        return Optional.ofNullable(values.get(key.text()));
    }

    Optional<String> text(RuleKey key) {
        return node(key).filter(YamlNode.Scalar.class::isInstance).map(n -> ((YamlNode.Scalar) n).text());
    }

    Place placeOf(RuleKey key) {
        return node(key).map(YamlNode::place).orElse(place);
    }

    RuleSource without(Set<String> keys) {
        Map<String, YamlNode> fewer = new LinkedHashMap<>(values);
        fewer.keySet().removeAll(keys);
        Map<String, String> fewerAssumed = new LinkedHashMap<>(assumed);
        fewerAssumed.keySet().removeAll(keys);
        return new RuleSource(name, fewer, own, stated, fewerAssumed, place);
    }

    /** What was written, in one line: lists with commas, a mapping as {@code setting: flood, ebb}. */
    static String written(YamlNode node) {
        if (node instanceof YamlNode.Scalar scalar) {
            return scalar.text();
        }
        if (node instanceof YamlNode.Sequence list) {
            return list.items().stream().map(RuleSource::written).collect(Collectors.joining(", "));
        }
        return ((YamlNode.Mapping) node)
                .entries().stream()
                        .map(e -> e.key() + ": " + written(e.value()))
                        .collect(Collectors.joining("; "));
    }
}
