package org.ellwand.audit;

import java.util.List;
import java.util.Set;
import org.ellwand.measurement.Reading;
import org.ellwand.quantity.Formula;

/**
 * Repeats whose observed scatter may tell the uncertainty: insertions, or heads, or units.
 *
 * @param key identity, for the seeds of its draws
 * @param kind what is repeated
 * @param weight factor with which the mean of the repeats enters the judged number
 * @param members at least one
 */
record Repeats(String key, Kind kind, double weight, List<Member> members) {
    enum Kind {
        INSERTIONS,
        HEADS,
        UNITS
    }

    /**
     * One repeat.
     *
     * @param formula the judged number from this repeat alone
     * @param readings the readings in place that are its own
     */
    record Member(Formula formula, Set<Reading> readings) {}

    int count() {
        return members.size();
    }
}
