package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.amount.Interval;
import org.ellwand.statistics.BinomialShare;
import org.ellwand.statistics.NormalErrors;

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

    /** In words, one statement each; none where the units are too few. */
    List<String> statements() {
        return units.size() < FEWEST ? List.of() : List.of(share() + capability() + "; " + worst(), testLimits());
    }

    private String share() {
        int inside = (int) units.values().stream().filter(Unit::inside).count();
        double bound = new BinomialShare(units.size(), inside).shareAtLeast(confidence);
        return inside + " of " + units.size() + " units lie inside the limit as measured, so that with "
                + Numbers.rounded(100 * confidence, 1) + " % confidence at least "
                + Numbers.rounded(Math.floor(1000 * bound) / 10, 1) + " % of the lot do";
    }

    private String capability() {
        double[] values = units.values().stream().mapToDouble(Unit::value).toArray();
        double mean = Arrays.stream(values).average().orElseThrow();
        double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
        double deviation = Math.sqrt(squares / (values.length - 1));
        double distance = Math.min(mean - limit.lower(), limit.upper() - mean);
        return deviation == 0
                ? ""
                : "; capability " + Numbers.rounded(distance / (3 * deviation), 2) + " (mean "
                        + Numbers.rounded(mean, 2) + ", standard deviation " + Numbers.rounded(deviation, 2) + ")";
    }

    private String worst() {
        Map.Entry<String, Unit> worst = units.entrySet().stream()
                .min(Comparator.comparingDouble(e -> e.getValue().margin()))
                .orElseThrow();
        return "worst unit " + worst.getKey() + " at "
                + Numbers.rounded(worst.getValue().value(), 2) + symbol();
    }

    private String testLimits() {
        double u = units.values().stream().mapToDouble(Unit::u).max().orElse(0);
        double guard = NormalErrors.z(confidence) * u;
        List<String> ends = new ArrayList<>();
        if (limit.hasLower()) {
            ends.add("at least " + Numbers.rounded(limit.lower() + guard, 2) + symbol());
        }
        if (limit.hasUpper()) {
            ends.add("at most " + Numbers.rounded(limit.upper() - guard, 2) + symbol());
        }
        boolean room = !(limit.upper() - limit.lower() < 2 * guard);
        return "to accept a unit with the claim's confidence, measured as these were (guard band "
                + Numbers.rounded(guard, 2) + symbol() + "): "
                + (room ? String.join(" and ", ends) : "no value will do, the uncertainty is too wide for this limit");
    }

    private String symbol() {
        return limit.unit().symbol().isEmpty() ? "" : " " + limit.unit().symbol();
    }
}
