package org.ellwand.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Session;

/**
 * The sittings that claims want: one for each ear and sample that was measured, or one for a first ear. A claim that names sessions which
 * are still to be, the second of {@code between: {session: [new, washed]}} say, gets each of them under that very name, of the ears that wore
 * the product in the others it names.
 */
final class Sittings {
    private final String product;
    private final List<Session> worn;
    private final Set<String> measured;

    private Sittings(String product, List<Session> worn, Set<String> measured) {
        this.product = product;
        this.worn = worn;
        this.measured = measured;
    }

    /**
     * @param worn the earlier sessions with the product in place
     * @param measured ids of all sessions there are
     */
    static List<Sitting> of(String product, List<Session> worn, Set<String> measured, List<Wanted> wanted) {
        return new Sittings(product, worn, measured).of(wanted);
    }

    /** The sessions that a claim names, in any of its rules; none where any will do. */
    static Set<String> named(Claim claim) {
        Set<String> names = new LinkedHashSet<>();
        Stream.concat(claim.rule().stream(), claim.otherwise().stream()).forEach(rule -> names.addAll(named(rule)));
        return names;
    }

    /** The sessions that a rule names; none where any will do. */
    static List<String> named(Rule rule) {
        return Wanted.named(rule, "session");
    }

    private List<Sitting> of(List<Wanted> wanted) {
        Map<String, List<Wanted>> toBe = new LinkedHashMap<>();
        for (Wanted one : wanted) {
            named(one.claim()).stream()
                    .filter(name -> !measured.contains(name))
                    .forEach(name ->
                            toBe.computeIfAbsent(name, k -> new ArrayList<>()).add(one));
        }
        List<Wanted> others = new ArrayList<>(wanted);
        toBe.values().forEach(others::removeAll);
        List<Sitting> sittings = new ArrayList<>(others.isEmpty() ? List.of() : ofWearers(others));
        toBe.forEach((name, some) -> sittings.add(ofName(name, some)));
        return sittings;
    }

    private List<Sitting> ofWearers(List<Wanted> wanted) {
        List<Sitting> sittings = new ArrayList<>();
        List<Wearer> wearers = new ArrayList<>();
        for (Session session : worn) {
            SittingPlan plan = new SittingPlan(product, Optional.of(session), worn, wanted);
            for (Wearer wearer : Wearer.of(session, product)) {
                wearers.add(wearer);
                sittings.add(plan.of(wearer));
            }
        }
        Map<Wearer, List<Wanted>> named = Wearer.named(wanted, wearers);
        List<Wanted> unnamed = new ArrayList<>(wanted);
        named.values().forEach(unnamed::removeAll);
        if (worn.isEmpty() && !unnamed.isEmpty()) {
            sittings.add(new SittingPlan(product, Optional.empty(), worn, unnamed).of(Wearer.unknown()));
        }
        Optional<Session> like = worn.stream().findFirst();
        sittings.addAll(of(named, like));
        return sittings;
    }

    /** A session to be, by everybody who wore the product in the sessions that are named beside it; else in any; else by somebody. */
    private Sitting ofName(String name, List<Wanted> wanted) {
        Set<String> beside = new LinkedHashSet<>();
        wanted.forEach(one -> beside.addAll(named(one.claim())));
        List<Session> there =
                worn.stream().filter(session -> beside.contains(session.id())).toList();
        List<Session> alike = there.isEmpty() ? worn : there;
        Optional<Session> like = alike.stream().findFirst();
        Map<Wearer, List<Wanted>> wearers = new LinkedHashMap<>();
        alike.forEach(session -> Wearer.of(session, product).forEach(wearer -> wearers.put(wearer.alone(), wanted)));
        Wearer.named(wanted, List.copyOf(wearers.keySet()))
                .forEach((wearer, some) -> wearers.put(wearer.alone(), some));
        if (wearers.isEmpty()) {
            wearers.put(Wearer.unknown(), wanted);
        }
        return Sitting.joined(name, of(wearers, like));
    }

    /** One sitting for each wearer. */
    private List<Sitting> of(Map<Wearer, List<Wanted>> wearers, Optional<Session> like) {
        Map<List<Wanted>, SittingPlan> plans = new HashMap<>();
        return wearers.entrySet().stream()
                .map(one -> plans.computeIfAbsent(one.getValue(), some -> new SittingPlan(product, like, worn, some))
                        .of(one.getKey()))
                .toList();
    }
}
