package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ellwand.acoustics.AttenuationTable;
import org.ellwand.acoustics.Bands;
import org.ellwand.amount.Amount;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.statistics.Sample;

/** A maker's own printed table, held against the test frequencies that its method takes. */
final class PrintedTable {
    /** Test frequencies that are also printed otherwise, in Hz. */
    private static final Map<Integer, Integer> ALSO_PRINTED = Map.of(3000, 3150, 6000, 6300);

    private final Rule rule;
    private final RatingMethod method;
    private final List<String> faults = new ArrayList<>();

    private PrintedTable(Rule rule, RatingMethod method) {
        this.rule = rule;
        this.method = method;
    }

    /**
     * The table of a rule that carries one.
     *
     * @throws InputException where a frequency is missing, stands twice or is none of the method's
     */
    static AttenuationTable of(Rule rule, RatingMethod method) throws InputException {
        PrintedTable table = new PrintedTable(rule, method);
        List<Integer> frequencies = table.frequencies();
        if (!table.faults.isEmpty()) {
            throw new InputException(rule.place(), table.message());
        }
        return new AttenuationTable(table.rows(frequencies));
    }

    private List<Integer> frequencies() {
        List<Integer> met = new ArrayList<>();
        for (String text : texts("frequency")) {
            Optional<Integer> hz = frequency(number(text, Unit.HZ));
            if (hz.isEmpty()) {
                faults.add(text + " is none of them");
            } else if (met.contains(hz.get())) {
                faults.add(text + " stands twice");
            } else {
                met.add(hz.get());
            }
        }
        method.frequenciesHz().stream()
                .filter(hz -> !met.contains(hz) && !method.isOptional(hz))
                .forEach(hz -> faults.add(hz + " Hz is missing"));
        return met;
    }

    private Optional<Integer> frequency(double hz) {
        int meant = ALSO_PRINTED.getOrDefault((int) hz, (int) Math.round(hz));
        return method.frequenciesHz().stream()
                .filter(f -> Math.abs(meant - f) <= f * Bands.TOLERANCE)
                .findFirst();
    }

    private String message() {
        String accepted = method.frequenciesHz().stream()
                .map(hz -> hz + (method.isOptional(hz) ? " (where measured)" : ""))
                .collect(Collectors.joining(", "));
        return "the 'table' of a rating by " + method.text() + " holds " + accepted + " Hz, each once: "
                + String.join("; ", faults);
    }

    private SortedMap<Integer, Sample> rows(List<Integer> frequencies) {
        List<String> means = texts("mean");
        List<String> deviations = texts("deviation");
        SortedMap<Integer, Sample> rows = new TreeMap<>();
        for (int i = 0; i < frequencies.size(); i++) {
            rows.put(frequencies.get(i), new Sample(number(means.get(i), Unit.DB), number(deviations.get(i), Unit.DB)));
        }
        return rows;
    }

    private List<String> texts(String key) {
        return Arrays.asList(rule.table().getOrDefault(key, "").split(", "));
    }

    private static double number(String text, Unit unit) {
        try {
            Amount amount = Phrases.amount(text);
            return amount.unit() == Unit.NONE ? amount.value() : amount.in(unit);
        } catch (PhraseException e) {
            throw new IllegalStateException("the claims reader accepted '" + text + "'", e);
        }
    }
}
