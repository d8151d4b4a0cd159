package org.ellwand.claim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.ellwand.input.Fields;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;

/** Reads {@code between: {setting: [flood, ebb]}}. */
final class Comparisons {
    private static final String FORM =
            "'between' takes one condition with two of its values, as {setting: [flood, ebb]}";

    private Comparisons() {}

    /** What may be compared: every condition, and what tells sounds and devices apart. */
    static List<String> comparable(Collection<String> declaredConditions) {
        List<String> names = new ArrayList<>(RuleKey.conditions(declaredConditions));
        names.addAll(List.of("level", "stimulus", "device"));
        return names;
    }

    static Optional<Between> read(YamlNode node, Problems problems) {
        if (!(node instanceof YamlNode.Mapping mapping) || mapping.entries().size() != 1) {
            problems.add(node.place(), FORM);
            return Optional.empty();
        }
        YamlNode.Entry entry = mapping.entries().get(0);
        if (!(entry.value() instanceof YamlNode.Sequence)) {
            problems.add(entry.value().place(), FORM);
            return Optional.empty();
        }
        return values(entry.key(), entry.value().place(), Fields.texts(entry.key(), entry.value(), problems), problems);
    }

    private static Optional<Between> values(String condition, Place place, List<String> values, Problems problems) {
        if (values.size() != 2) {
            problems.add(place, FORM);
            return Optional.empty();
        }
        if (values.get(0).equals(values.get(1))) {
            problems.add(place, "'between' compares '" + values.get(0) + "' with itself");
        }
        return Optional.of(new Between(condition, values.get(0), values.get(1)));
    }
}
