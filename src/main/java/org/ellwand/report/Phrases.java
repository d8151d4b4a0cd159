package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ellwand.amount.Amount;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Stimulus;

/** Names, amounts and conditions as several parts of a report print them. */
final class Phrases {
    private Phrases() {}

    static String amount(Amount amount) {
        return Numbers.withUnit(Numbers.fixed(amount.value(), amount.decimals()), amount.unit());
    }

    /** {@code ear crew-01-left, setting flood}. */
    static String conditions(Conditions conditions) {
        return pairs(conditions.values());
    }

    static String pairs(Map<String, String> pairs) {
        return pairs.entrySet().stream()
                .map(pair -> pair.getKey() + " " + pair.getValue())
                .collect(Collectors.joining(", "));
    }

    /** {@code pink noise, 94 dB SPL}. */
    static String stimulus(Stimulus stimulus) {
        List<String> levels = stimulus.levels().stream().map(Phrases::amount).toList();
        return levels.isEmpty() ? stimulus.kind() : stimulus.kind() + ", " + String.join(", ", levels);
    }

    /** A size may begin just behind the frequency where the one before it ends; people read that frequency. */
    static String bound(double hz) {
        return Numbers.hertz(Math.round(hz * 1e6) / 1e6);
    }
}
