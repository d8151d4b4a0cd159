package org.ellwand.audit;

import java.util.List;
import java.util.Optional;
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
 * @param other what the mean of the repeats is held against; absent where the repeats hold both sides, or there is one
 */
record Repeats(String key, Kind kind, double weight, List<Member> members, Optional<Other> other) {
    enum Kind {
        INSERTIONS,
        HEADS,
        UNITS
    }

    /**
     * One repeat.
     *
     * @param formula the judged number from this repeat alone, or that of its side
     * @param readings the readings in place that are its own
     */
    record Member(Formula formula, Set<Reading> readings) {}

    /**
     * The other side of a comparison of which the repeats are one side.
     *
     * @param formula of its mean
     * @param isFirst whether the other side stands first
     * @param ratio whether the comparison is a ratio
     */
    record Other(Formula formula, boolean isFirst, boolean ratio) {
        /** Turns numbers of the repeats' side into judged numbers, given those of the other side. */
        void hold(double[] numbers, double[] others) {
            for (int p = 0; p < numbers.length; p++) {
                double first = isFirst ? others[p] : numbers[p];
                double second = isFirst ? numbers[p] : others[p];
                numbers[p] = ratio ? first / second : first - second;
            }
        }
    }

    /** Repeats that hold all that the judged number is made of. */
    static Repeats of(String key, Kind kind, List<Member> members) {
        return new Repeats(key, kind, 1, members, Optional.empty());
    }

    /** These repeats as one side of a comparison. */
    Repeats against(Other side) {
        return new Repeats(key, kind, weight, members, Optional.of(side));
    }

    int count() {
        return members.size();
    }
}
