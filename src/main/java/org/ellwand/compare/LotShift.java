package org.ellwand.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.ellwand.audit.AuditRecord;
import org.ellwand.audit.Contribution;

/**
 * The shift of the mean over the units of a lot. Where the same units were judged in both audits, it is the mean of their own
 * shifts with the scatter of these; where they are others, the difference of the means with the scatter of both (each a scaled
 * t: Behrens 1929, Fisher 1935; with many units what Welch 1947 approximates). The scatter over units holds what unit, insertion
 * and reading add; what moves every unit of a side alike is taken as declared, and cancels where both sides share it.
 */
final class LotShift {
    /** Of fewer units measured twice, each unit's own shift says more than their mean. */
    private static final int FEWEST = 5;

    private final Map<String, AuditRecord.OfCell> first;
    private final Map<String, AuditRecord.OfCell> second;

    private LotShift(Map<String, AuditRecord.OfCell> first, Map<String, AuditRecord.OfCell> second) {
        this.first = first;
        this.second = second;
    }

    /**
     * Of cells with a value that differ in their unit alone; absent where they are no lot. A few units that are in both lots, as
     * those that watch the line are, do not stand for the rest: only where most of the smaller lot is in both are they the lot.
     */
    static Optional<LotShift> of(List<AuditRecord.OfCell> first, List<AuditRecord.OfCell> second) {
        LotShift lot = new LotShift(byUnit(first), byUnit(second));
        int shared = lot.shared();
        int rest = Math.min(lot.first.size(), lot.second.size()) - shared;
        if (shared >= FEWEST && shared >= rest) {
            lot.first.keySet().retainAll(lot.second.keySet());
            lot.second.keySet().retainAll(lot.first.keySet());
            return Optional.of(lot);
        }
        return rest >= (shared == 0 ? 2 : FEWEST) ? Optional.of(lot) : Optional.empty();
    }

    /** How many units are in both. */
    private int shared() {
        return (int) first.keySet().stream().filter(second::containsKey).count();
    }

    private static Map<String, AuditRecord.OfCell> byUnit(List<AuditRecord.OfCell> cells) {
        Map<String, AuditRecord.OfCell> byUnit = new TreeMap<>();
        cells.stream()
                .filter(c -> c.conditions().containsKey("unit"))
                .forEach(c -> byUnit.putIfAbsent(c.conditions().getOrDefault("unit", ""), c));
        return byUnit;
    }

    boolean isPaired() {
        return first.keySet().equals(second.keySet());
    }

    /** How many units there are in the first audit, and in the second. */
    ClaimComparison.Units units() {
        return new ClaimComparison.Units(first.size(), second.size(), shared());
    }

    /** The mean over the units of the first, as a cell with the causes that move all of them alike. */
    AuditRecord.OfCell firstMean() {
        return mean(first, isPaired() ? Optional.empty() : Optional.of(values(first)));
    }

    /** The mean over the units of the second; where the units are the same, it carries the scatter of their shifts. */
    AuditRecord.OfCell secondMean() {
        if (!isPaired()) {
            return mean(second, Optional.of(values(second)));
        }
        double[] shifts = values(second);
        double[] before = values(first);
        for (int i = 0; i < shifts.length; i++) {
            shifts[i] -= before[i];
        }
        return mean(second, Optional.of(shifts));
    }

    private static AuditRecord.OfCell mean(Map<String, AuditRecord.OfCell> units, Optional<double[]> scattering) {
        double mean = Arrays.stream(values(units)).average().orElseThrow();
        List<Contribution> common = common(units);
        boolean known =
                units.values().stream().allMatch(c -> c.standardUncertainty().isPresent());
        Map<String, String> conditions =
                new LinkedHashMap<>(units.values().iterator().next().conditions());
        conditions.remove("unit");
        return new AuditRecord.OfCell(
                conditions,
                OptionalDouble.of(mean),
                known ? OptionalDouble.of(0) : OptionalDouble.empty(),
                scattering.map(x -> with(common, scatter(x))).orElse(common),
                units.values().iterator().next().hz());
    }

    private static List<Contribution> with(List<Contribution> common, Contribution scatter) {
        List<Contribution> all = new ArrayList<>(common);
        all.add(scatter);
        return all;
    }

    private static Contribution scatter(double[] x) {
        double mean = Arrays.stream(x).average().orElseThrow();
        double squares = Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum();
        int n = x.length;
        return new Contribution("units", "units", Math.sqrt(squares / (n - 1.0) / n), OptionalInt.of(n - 1));
    }

    /** What is declared and moves every unit, by its mean effect. */
    private static List<Contribution> common(Map<String, AuditRecord.OfCell> units) {
        Map<Draw, Integer> counts = new LinkedHashMap<>();
        Map<Draw, Double> effects = new LinkedHashMap<>();
        units.values().stream()
                .flatMap(c -> c.contributions().stream())
                .filter(c -> c.degreesOfFreedom().isEmpty())
                .forEach(c -> {
                    Draw draw = Draw.of(c);
                    counts.merge(draw, 1, Integer::sum);
                    effects.merge(draw, c.effect() / units.size(), Double::sum);
                });
        return counts.entrySet().stream()
                .filter(e -> e.getValue() == units.size() && e.getKey().isOfAllUnits())
                .map(e -> new Contribution(
                        e.getKey().cause(),
                        e.getKey().instance(),
                        effects.getOrDefault(e.getKey(), 0.0),
                        OptionalInt.empty()))
                .toList();
    }

    private static double[] values(Map<String, AuditRecord.OfCell> units) {
        return units.values().stream().mapToDouble(c -> c.value().orElseThrow()).toArray();
    }
}
