package org.ellwand.pairing;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.ellwand.claim.Between;
import org.ellwand.measurement.Conditions;
import org.ellwand.words.Remark;

/** What is said where the two sides of a comparison make no pairs, or where a part of them makes none. */
public final class Unpaired {
    /** In these two of a pair may differ. */
    private static final Set<String> PASSING = Set.of("session", "stimulus");

    private Unpaired() {}

    /**
     * {@return why nothing pairs up; absent where nothing was measured on either side}
     *
     * @param between the two values that are compared
     * @param first what was measured of the first
     * @param second what was measured of the second
     */
    public static Optional<Remark> all(Between between, List<Conditions> first, List<Conditions> second) {
        if (first.isEmpty() && second.isEmpty()) {
            return Optional.empty();
        }
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.of(Remark.of("one-side-only")
                    .with("condition", between.condition())
                    .with("value", first.isEmpty() ? between.first() : between.second()));
        }
        SortedSet<String> apart = apart(between, first, second);
        return Optional.of(Remark.of("no-pairs" + hint(apart))
                .with("condition", between.condition())
                .with("first", between.first())
                .with("second", between.second())
                .with("names", apart));
    }

    private static String hint(Set<String> apart) {
        if (apart.equals(Set.of("unit"))) {
            return "-of-units";
        }
        boolean people = !apart.isEmpty() && Set.of("head", "ear", "side").containsAll(apart);
        return people ? "-of-ears" : apart.isEmpty() ? "" : "-of-others";
    }

    /** The conditions of which the two sides have no value in common. */
    private static SortedSet<String> apart(Between between, List<Conditions> first, List<Conditions> second) {
        SortedSet<String> names = new TreeSet<>();
        Stream.concat(first.stream(), second.stream())
                .forEach(one -> names.addAll(one.values().keySet()));
        names.removeAll(PASSING);
        names.remove(between.condition());
        names.removeIf(name -> {
            Set<Optional<String>> values = values(name, first);
            values.retainAll(values(name, second));
            return !values.isEmpty();
        });
        return names;
    }

    private static Set<Optional<String>> values(String name, List<Conditions> side) {
        Set<Optional<String>> values = new HashSet<>();
        side.forEach(one -> values.add(one.get(name)));
        return values;
    }

    /**
     * {@return how many people or products were measured on one side only and are left out of a mean; absent where
     * none}
     *
     * @param averaged what the rule averages over
     * @param first what was measured on the first side
     * @param second what was measured on the second side
     * @param paired what was measured on both
     */
    public static Optional<Remark> some(
            Averaged averaged, List<Conditions> first, List<Conditions> second, List<Conditions> paired) {
        if (averaged.isNothing() || paired.isEmpty()) {
            return Optional.empty();
        }
        Set<String> left = new HashSet<>(averaged.members(first));
        left.addAll(averaged.members(second));
        left.removeAll(averaged.members(paired));
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of(Remark.of(averaged.units() ? "units-on-one-side" : "heads-on-one-side")
                        .with("count", left.size()));
    }

    /**
     * {@return the remark that means are held against each other instead of pairs}
     *
     * @param averaged what the rule averages over
     * @param first what was measured on the first side
     * @param second what was measured on the second side
     */
    public static Remark compared(Averaged averaged, List<Conditions> first, List<Conditions> second) {
        return Remark.of(averaged.units() ? "means-of-units" : "means-of-heads")
                .with("first", averaged.members(first).size())
                .with("second", averaged.members(second).size());
    }
}
