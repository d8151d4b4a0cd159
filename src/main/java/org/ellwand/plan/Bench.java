package org.ellwand.plan;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;

/**
 * What no curve sheet holds of a product, by session: single figures, traces and harmonics. A claim that names sessions which are still to
 * be gets what it asks for in each of them under that very name; where all are there, in new ones named after them; what goes by any
 * session stands in one of its own.
 */
final class Bench {
    private final Plan plan;
    private final String product;
    private final Map<String, BenchEntries> bySession = new LinkedHashMap<>();

    private Bench(Plan plan) {
        this.plan = plan;
        this.product = plan.product().product().name();
    }

    static Bench of(Plan plan) {
        Bench bench = new Bench(plan);
        plan.outlooks().stream().filter(Outlook::isOfBench).forEach(bench::add);
        bench.bySession.values().removeIf(BenchEntries::isEmpty);
        return bench;
    }

    /** The sheets of all sessions, and the session files of those that no sitting reads curves in. */
    SortedMap<String, String> files() {
        SortedMap<String, String> files = new TreeMap<>();
        bySession.values().forEach(entries -> files.putAll(entries.sheets));
        bySession.values().stream()
                .filter(entries -> plan.sittings().stream()
                        .noneMatch(sitting -> sitting.id().equals(entries.id())))
                .forEach(entries -> files.put(entries.file() + ".yaml", BenchFile.yaml(product, entries)));
        return files;
    }

    /** What is to be read in a session besides its curves. */
    Optional<BenchEntries> besides(Sitting sitting) {
        return Optional.ofNullable(bySession.get(sitting.id()));
    }

    /** The programmes that the open ear is to hear, in one session after the other. */
    List<Stimulus> programmes() {
        return bySession.values().stream()
                .flatMap(entries -> entries.programmes.values().stream())
                .filter(sound -> Loudness.fieldDb(sound) <= Loudness.MOST_ON_PEOPLE_DB)
                .toList();
    }

    private void add(Outlook outlook) {
        for (Rule rule : new Wanted(outlook.audited().claim(), outlook.insertions()).rules()) {
            List<String> named = Sittings.named(rule);
            Set<String> toBe = new LinkedHashSet<>(named);
            toBe.removeAll(plan.measured());
            if (named.isEmpty()) {
                String id = "plan-" + Text.slug(product + " bench");
                add(rule, outlook, entries(id, id, named));
            } else if (toBe.isEmpty()) {
                named.stream()
                        .map(name -> "plan-" + Text.slug(name + " bench"))
                        .forEach(id -> add(rule, outlook, entries(id, id, named)));
            } else {
                toBe.forEach(name -> add(rule, outlook, entries(name, Sitting.file(name), named)));
            }
        }
    }

    /** Those of a session so far; worn by who wore the product in the sessions named beside it, else by who wore it first. */
    private BenchEntries entries(String id, String file, List<String> beside) {
        return bySession.computeIfAbsent(id, session -> {
            List<Session> there = plan.worn().stream()
                    .filter(one -> beside.contains(one.id()))
                    .toList();
            List<Session> alike = there.isEmpty() ? plan.worn() : there;
            Sounds sounds =
                    new Sounds(alike.stream().findFirst().map(Session::stimuli).orElse(Map.of()));
            Wearer wearer = alike.stream()
                    .flatMap(one -> Wearer.of(one, product).stream())
                    .findFirst()
                    .orElseGet(Wearer::unknown);
            return new BenchEntries(id, file, sounds, wearer);
        });
    }

    private void add(Rule rule, Outlook outlook, BenchEntries entries) {
        for (SortedMap<String, String> conditions : Wanted.combinations(rule, product, plan.worn())) {
            switch (rule.quantity()) {
                case "figure" -> entries.figure(rule, conditions);
                case "attack time", "release time" -> entries.step(rule, conditions);
                case "harmonic distortion" -> entries.harmonics(rule, conditions);
                case "level drift" -> entries.drift(rule, conditions, outlook.insertions(), earlier(outlook));
                case "gain steadiness" -> entries.programme(rule, conditions, outlook.insertions());
                default -> {
                    // A rating needs a panel, which has a file of its own.
                }
            }
        }
    }

    /** Who wore what a claim was judged by so far, if anybody: other ears would be no repeats. Absent where nothing was. */
    private static Optional<Wearer> earlier(Outlook outlook) {
        return outlook.audited().plain().stream()
                .flatMap(judgement -> judgement.cells().stream())
                .findFirst()
                .map(cell -> Wearer.named(cell.conditions()));
    }
}
