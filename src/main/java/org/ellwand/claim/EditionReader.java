package org.ellwand.claim;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.input.Fields;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;

/** Reads the editions of a claims file. */
final class EditionReader {
    static final List<String> KEYS = List.of("id", "source", "dated", "kept", "conditions", "may be quoted");

    private final List<String> conditions;
    private final Problems problems;
    private final ProductFields common;

    EditionReader(List<String> conditions, Problems problems) {
        this.conditions = conditions;
        this.problems = problems;
        this.common = new ProductFields(problems);
    }

    /** The editions by id, in the order of the file. */
    Map<String, Edition> read(List<YamlNode> nodes) {
        List<Fields> all = nodes.stream()
                .flatMap(node -> Fields.of(node, "an edition", KEYS, problems).stream())
                .toList();
        common.refuseTwice("id", all);
        Map<String, Edition> editions = new LinkedHashMap<>();
        for (Fields fields : all) {
            Edition edition = edition(fields);
            editions.put(edition.id(), edition);
        }
        return editions;
    }

    private Edition edition(Fields fields) {
        return new Edition(
                common.id(fields).orElse(""),
                fields.requiredText("source").orElse(""),
                common.requiredDate(fields, "dated").orElse(""),
                fields.text("kept"),
                conditions(fields),
                mayBeQuoted(fields));
    }

    private Map<String, String> conditions(Fields fields) {
        Map<String, String> named = new LinkedHashMap<>();
        fields.value("conditions")
                .flatMap(node -> Fields.of(node, "'conditions'", conditions, problems))
                .ifPresent(inner -> inner.entries()
                        .forEach(entry -> inner.text(entry.key()).ifPresent(value -> named.put(entry.key(), value))));
        return Collections.unmodifiableMap(named);
    }

    private boolean mayBeQuoted(Fields fields) {
        Optional<String> text = fields.text("may be quoted");
        text.filter(t -> !t.equals("yes") && !t.equals("no"))
                .ifPresent(t -> problems.add(
                        fields.place("may be quoted"), "'may be quoted' takes yes or no, not '" + t + "'"));
        return text.filter("no"::equals).isEmpty();
    }
}
