package org.ellwand.statistics;

/**
 * The error of a ratio of two independent normal numbers, A/B − a/b. With B certainly above 0,
 * P(A/B ≤ y) = P(A − y B ≤ 0) = Φ((y b − a) / √(u_a² + y² u_b²)); quantiles are the roots of that (Fieller 1954, from
 * memory). What is lost is P(B ≤ 0), less than 1e-6 where b is at least 4.8 u_b.
 */
public final class RatioErrors implements Errors {
    private final double first;
    private final double firstDeviation;
    private final double second;
    private final double secondDeviation;

    /**
     * @param first a
     * @param firstDeviation u_a
     * @param second b, not 0
     * @param secondDeviation u_b
     */
    public RatioErrors(double first, double firstDeviation, double second, double secondDeviation) {
        // Signs turned together leave the ratio as it is.
        this.first = second < 0 ? -first : first;
        this.firstDeviation = firstDeviation;
        this.second = Math.abs(second);
        this.secondDeviation = secondDeviation;
    }

    private double ratio() {
        return first / second;
    }

    @Override
    public double atMost(double x) {
        return NormalErrors.phi(distance(x));
    }

    @Override
    public double atLeast(double x) {
        return NormalErrors.phi(-distance(x));
    }

    private double distance(double x) {
        if (Double.isInfinite(x)) {
            return x;
        }
        double y = ratio() + x;
        double off = x * second;
        double deviation = Math.hypot(firstDeviation, y * secondDeviation);
        return deviation == 0 ? (off >= 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY) : off / deviation;
    }

    /** Infinite where the second number may be so near 0 that the ratio has no such quantile. */
    @Override
    public double quantile(double probability) {
        double z = NormalErrors.z(probability);
        double lead = second * second - z * z * secondDeviation * secondDeviation;
        if (lead <= 0) {
            return z > 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        double root =
                Math.sqrt(firstDeviation * firstDeviation * lead + secondDeviation * secondDeviation * first * first);
        return (first * second + z * root) / lead - ratio();
    }
}
