package org.ellwand.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.quantity.Quantities;
import org.ellwand.quantity.SpectralQuantity;

/**
 * A condition that some claims of a product name and others say nothing of, though the same readings would serve both. An audit refuses to
 * guess which of several values a claim means: so such a claim is read under one of them, and is to name it before what was read is audited.
 *
 * @param condition setting, fit, firmware, unit, or whose ear it is
 * @param value under which those claims are read that say nothing
 * @param values all that there will be readings of, in their order
 * @param claims that say nothing of it, decided ones among them
 */
record Unsaid(String condition, String value, SortedSet<String> values, List<ClaimAudit> claims) {
    private static final Set<String> OF_EARS = Set.of("head", "ear", "side");
    private static final List<String> NAMES = List.of("setting", "fit", "firmware", "unit", "head", "ear", "side");

    /**
     * What is left unsaid in a product. Where a claim is read under a condition for the sake of another, its own readings may serve a third: so
     * it is looked for again until nothing changes.
     *
     * @param wanted claims whose curves are to be read
     * @param all claims of the product
     * @param worn sessions that were measured
     */
    static List<Unsaid> in(String product, List<Wanted> wanted, List<ClaimAudit> all, List<Session> worn) {
        List<Wanted> said = wanted;
        List<Unsaid> unsaid = List.of();
        for (int round = 0; round <= wanted.size(); round++) {
            unsaid = once(product, said, all, worn);
            List<Wanted> next = said(wanted, unsaid);
            if (next.equals(said)) {
                break;
            }
            said = next;
        }
        return unsaid;
    }

    private static List<Unsaid> once(String product, List<Wanted> wanted, List<ClaimAudit> all, List<Session> worn) {
        Sounds sounds =
                new Sounds(worn.stream().findFirst().map(Session::stimuli).orElse(Map.of()));
        List<Unsaid> unsaid = new ArrayList<>();
        for (String name : NAMES) {
            Set<String> known = Wanted.known(name, product, worn);
            Map<Unsaid, List<ClaimAudit>> alike = new LinkedHashMap<>();
            for (ClaimAudit claim : known.size() > 1 ? List.<ClaimAudit>of() : all) {
                of(name, known, wanted, claim, sounds)
                        .ifPresent(one -> alike.computeIfAbsent(one, k -> new ArrayList<>())
                                .add(claim));
            }
            alike.forEach(
                    (one, claims) -> unsaid.add(new Unsaid(name, one.value(), one.values(), List.copyOf(claims))));
        }
        return unsaid;
    }

    private static Optional<Unsaid> of(
            String name, Set<String> known, List<Wanted> wanted, ClaimAudit claim, Sounds sounds) {
        Optional<Rule> silent = claim.claim().rule().filter(rule -> isSilent(rule, name));
        List<String> named = silent.stream()
                .flatMap(rule -> wanted.stream()
                        .flatMap(one -> one.rules().stream())
                        .filter(other -> isServed(rule, other, name, sounds))
                        .flatMap(other -> Wanted.named(other, name).stream()))
                .toList();
        if (named.isEmpty()) {
            return Optional.empty();
        }
        SortedSet<String> values = new TreeSet<>(named);
        values.addAll(known);
        String value = known.isEmpty() ? named.get(0) : known.iterator().next();
        return Optional.of(new Unsaid(name, value, values, List.of()));
    }

    /** Whether a rule is about curves and says nothing of a condition, neither how several are to count. */
    private static boolean isSilent(Rule rule, String name) {
        boolean counted = OF_EARS.contains(name)
                ? rule.ears().isPresent()
                : name.equals("unit") && rule.units().isPresent();
        return !counted && !Wanted.says(rule, name) && Quantities.named(rule.quantity()) instanceof SpectralQuantity;
    }

    /** Whether an audit would take readings that are planned for another rule for this one as well. */
    private static boolean isServed(Rule rule, Rule other, String name, Sounds sounds) {
        boolean apart = rule.where().keySet().stream()
                .filter(condition -> !condition.equals(name))
                .anyMatch(condition -> isApart(Wanted.named(rule, condition), Wanted.named(other, condition)));
        if (apart || !(Quantities.named(other.quantity()) instanceof SpectralQuantity)) {
            return false;
        }
        List<Stimulus> read = new ArrayList<>(sounds.of(other));
        read.add(sounds.quiet());
        return read.stream().anyMatch(sound -> Sounds.serves(rule, sound));
    }

    private static boolean isApart(List<String> some, List<String> others) {
        return !some.isEmpty() && !others.isEmpty() && Collections.disjoint(some, others);
    }

    /** Whether there will be readings of several values, so that the claims must name one. */
    boolean isToBeSaid() {
        return values.size() > 1;
    }

    /** The same claims, those that say nothing under the one value. */
    static List<Wanted> said(List<Wanted> wanted, List<Unsaid> unsaid) {
        List<Wanted> said = new ArrayList<>();
        for (Wanted one : wanted) {
            TreeMap<String, String> under = new TreeMap<>(one.under());
            unsaid.stream()
                    .filter(some -> some.claims().stream()
                            .anyMatch(claim -> claim.claim().equals(one.claim())))
                    .forEach(some -> under.put(some.condition(), some.value()));
            said.add(new Wanted(one.claim(), one.insertions(), under));
        }
        return said;
    }
}
