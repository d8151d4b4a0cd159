package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ellwand.claim.Population;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Conditions;

/**
 * What a statement about people or products averages over.
 *
 * @param ears whether it speaks of people
 * @param units whether it speaks of products
 */
public record Averaged(boolean ears, boolean units) {
    private static final Set<String> WEARER = Set.of("session", "head", "ear", "side", "stimulus");
    private static final Set<String> UNIT = Set.of("session", "unit", "stimulus");

    /**
     * {@return what a rule averages over, be it for a mean or for a share}
     *
     * @param rule any rule
     */
    public static Averaged by(Rule rule) {
        return new Averaged(
                rule.ears().filter(Population::isBeyondTheMeasured).isPresent(),
                rule.units().filter(Population::isBeyondTheMeasured).isPresent());
    }

    /**
     * {@return the same for rules about means alone: a share counts people or products one by one}
     *
     * @param rule any rule
     */
    public static Averaged byMean(Rule rule) {
        return new Averaged(isMean(rule.ears()), isMean(rule.units()));
    }

    private static boolean isMean(Optional<Population> population) {
        return population.filter(Population.Mean.class::isInstance).isPresent();
    }

    /** {@return whether it averages over neither} */
    public boolean isNothing() {
        return !ears && !units;
    }

    /** {@return the names of the conditions that are averaged away} */
    public Set<String> conditions() {
        Set<String> names = new HashSet<>(ears ? WEARER : Set.of());
        names.addAll(units ? UNIT : Set.of());
        return names;
    }

    /**
     * {@return who, or what, was measured under these conditions: heads, units, or both together}
     *
     * @param measured the conditions of what was measured
     */
    public Set<String> members(List<Conditions> measured) {
        return measured.stream().map(this::member).collect(Collectors.toSet());
    }

    /**
     * Whether differences within people (or units) tell enough: two of them show how differences scatter; one does not where
     * there are more on a side.
     *
     * @param paired what was measured on both sides
     * @param first what was measured on the first side
     * @param second what was measured on the second side
     * @return whether they do; also where nothing is averaged, or one side was not measured
     */
    public boolean isServedBy(List<Conditions> paired, List<Conditions> first, List<Conditions> second) {
        int both = members(paired).size();
        return isNothing()
                || first.isEmpty()
                || second.isEmpty()
                || both > 1
                || (both == 1 && members(first).size() == 1 && members(second).size() == 1);
    }

    private String member(Conditions conditions) {
        List<String> parts = new ArrayList<>();
        if (ears) {
            parts.add(conditions.get("head").orElse(""));
        }
        if (units) {
            parts.add(conditions.get("unit").orElse(""));
        }
        return String.join("/", parts);
    }
}
