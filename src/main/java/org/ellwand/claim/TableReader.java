package org.ellwand.claim;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.input.Fields;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;

/** Reads a maker's own printed table of means and standard deviations: checks its form, keeps its text. */
final class TableReader {
    static final List<String> KEYS = List.of("frequency", "mean", "deviation");

    private final Problems problems;

    TableReader(Problems problems) {
        this.problems = problems;
    }

    Map<String, String> read(YamlNode node) {
        Map<String, String> table = new LinkedHashMap<>();
        Fields.of(node, "a table", KEYS, problems).ifPresent(fields -> {
            Map<String, Integer> lengths = new LinkedHashMap<>();
            KEYS.forEach(key -> {
                List<YamlNode> row = fields.requiredList(key);
                row.forEach(cell -> check(key, cell));
                lengths.put(key, row.size());
                fields.value(key).ifPresent(value -> table.put(key, RuleWords.written(value)));
            });
            if (lengths.values().stream().distinct().count() > 1 && !lengths.containsValue(0)) {
                problems.add(
                        fields.place(),
                        "the rows of a table are equally long; these have " + told(lengths)
                                + ": a comma separates numbers, decimals have a point");
            }
        });
        return Collections.unmodifiableMap(table);
    }

    private static String told(Map<String, Integer> lengths) {
        return lengths.entrySet().stream()
                .map(row -> row.getKey() + " " + row.getValue())
                .collect(Collectors.joining(", "));
    }

    private void check(String key, YamlNode cell) {
        Fields.text(key, cell, problems).ifPresent(text -> {
            try {
                if (key.equals("frequency")) {
                    Frequencies.single(text);
                } else {
                    refuseUnlikely(key, text);
                }
            } catch (PhraseException e) {
                problems.add(cell.place(), "'" + key + "': " + e.getMessage());
            }
        });
    }

    private static void refuseUnlikely(String key, String text) throws PhraseException {
        Unit unit = Phrases.amount(text).unit();
        if (unit != Unit.NONE && unit != Unit.DB) {
            throw new PhraseException("'" + text + "' is not in dB");
        }
        if (key.equals("deviation") && Phrases.amount(text).value() < 0) {
            throw new PhraseException("'" + text + "' is negative: a standard deviation is not");
        }
    }
}
