package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.amount.Interval;
import org.ellwand.statistics.BinomialShare;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.words.Figures;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;

/**
 * What the units of a lot, measured one by one, say of the lot: yield, capability, the worst of them, and limits to test the
 * next ones by.
 *
 * <p>Yield: the share of units inside as measured, and what share of all can be said to be inside (Clopper and Pearson
 * 1934). Capability: min(x̄ − L, U − x̄) / 3 s over the units (C_pk; ISO 22514-2, from memory). Test limits: each end moved
 * inwards by w = z · u, with z of the claim's confidence and u the largest uncertainty of a unit (guarded acceptance, JCGM
 * 106:2012, 8.3.2).
 */
final class Lot {
    /** A share and a scatter of fewer say little. */
    private static final int FEWEST = 5;

    private final Interval limit;
    private final double confidence;
    private final Map<String, Unit> units = new LinkedHashMap<>();

    private record Unit(double value, double margin, double u, boolean inside) {}

    Lot(Interval limit, double confidence) {
        this.limit = limit;
        this.confidence = confidence;
    }

    /**
     * Adds what was found of a unit; of several findings the worst counts.
     *
     * @param margin distance to the nearest end in units of u, negative outside
     */
    void add(String unit, Points.One point, double margin) {
        boolean inside = limit.contains(Ends.onEnd(point.value(), limit));
        Unit found = new Unit(point.value(), margin, point.errors().standardUncertainty(), inside);
        units.merge(unit, found, (a, b) -> b.margin() < a.margin() ? b : a);
    }

    /** None where the units are too few. */
    List<Remark> remarks() {
        if (units.size() < FEWEST) {
            return List.of();
        }
        List<Remark> facts = new ArrayList<>(List.of(share()));
        capability().ifPresent(facts::add);
        facts.add(worst());
        return List.of(Remark.of("lot").with("facts", facts), testLimits());
    }

    private Remark share() {
        int inside = (int) units.values().stream().filter(Unit::inside).count();
        double bound = new BinomialShare(units.size(), inside).shareAtLeast(confidence);
        return Remark.of("lot-yield")
                .with("inside", inside)
                .with("units", units.size())
                .with("confidence", Figures.rounded(100 * confidence, 1))
                .with("share", Figures.rounded(Math.floor(1000 * bound) / 10, 1));
    }

    private Optional<Remark> capability() {
        double[] values = units.values().stream().mapToDouble(Unit::value).toArray();
        double mean = Arrays.stream(values).average().orElseThrow();
        double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
        double deviation = Math.sqrt(squares / (values.length - 1));
        double distance = Math.min(mean - limit.lower(), limit.upper() - mean);
        return deviation == 0
                ? Optional.empty()
                : Optional.of(Remark.of("lot-capability")
                        .with("capability", Figures.rounded(distance / (3 * deviation), 2))
                        .with("mean", Figures.rounded(mean, 2))
                        .with("deviation", Figures.rounded(deviation, 2)));
    }

    private Remark worst() {
        Map.Entry<String, Unit> worst = units.entrySet().stream()
                .min(Comparator.comparingDouble(e -> e.getValue().margin()))
                .orElseThrow();
        return Remark.of("lot-worst")
                .with("unit", worst.getKey())
                .with("value", measure(worst.getValue().value()));
    }

    private Remark testLimits() {
        double u = units.values().stream().mapToDouble(Unit::u).max().orElse(0);
        double guard = NormalErrors.z(confidence) * u;
        Remark limits = Remark.of("lot-test-" + ends(guard))
                .with("guard", new Measure(guard, limit.unit().ofDifferences().symbol()));
        if (limit.hasLower()) {
            limits = limits.with("lower", measure(limit.lower() + guard));
        }
        return limit.hasUpper() ? limits.with("upper", measure(limit.upper() - guard)) : limits;
    }

    private String ends(double guard) {
        if (limit.upper() - limit.lower() < 2 * guard) {
            return "none";
        }
        return limit.hasLower() && limit.hasUpper() ? "between" : limit.hasLower() ? "at-least" : "at-most";
    }

    private Measure measure(double value) {
        return new Measure(value, limit.unit().symbol());
    }
}
