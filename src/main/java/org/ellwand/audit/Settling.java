package org.ellwand.audit;

import java.util.Map;
import org.ellwand.amount.Interval;
import org.ellwand.statistics.NormalErrors;

/**
 * Which kind of marginal it is, and what would settle it: more insertions, a smaller uncertainty, or nothing within reason
 * because the value lies on the limit.
 */
final class Settling {
    private static final int MOST_INSERTIONS = 20;

    private final Interval limit;
    private final double confidence;
    private final int points;

    Settling(Interval limit, double confidence) {
        this(limit, confidence, 1);
    }

    /** @param points of the claim: the worst of so many must look worse than one alone before it is called false */
    Settling(Interval limit, double confidence, int points) {
        this.limit = limit;
        this.confidence = confidence;
        this.points = points;
    }

    /**
     * The reason of a marginal verdict that nothing else explains.
     *
     * @param insertionPart standard uncertainty that more insertions would divide by √n
     * @param insertions how many there are
     */
    Reason of(Points.One point, double insertionPart, int insertions) {
        double u = point.errors().standardUncertainty();
        if (point.errors() instanceof ShareErrors share) {
            return new Reason(
                    "share-open",
                    Map.of("measured", share.count()),
                    "too few were measured for this share: " + said(share));
        }
        if (isTooWide(u)) {
            double needed = (limit.upper() - limit.lower()) / 2 / NormalErrors.z((1 + confidence) / 2);
            return new Reason(
                    "too-wide",
                    Map.of("u", u, "needed", needed),
                    "uncertainty too wide for this tolerance (u = " + Numbers.rounded(u, 2) + unit()
                            + "): no value could pass; u of at most " + Numbers.rounded(needed, 2) + unit()
                            + " could");
        }
        for (int n = insertions + 1; n <= MOST_INSERTIONS; n++) {
            double fewer = insertionPart * insertionPart * (1 - (double) insertions / n);
            if (isSettled(point.value(), Math.sqrt(Math.max(0, u * u - fewer)))) {
                return new Reason(
                        "too-few-insertions",
                        Map.of("insertions", insertions, "needed", n),
                        "too few insertions: were the value to stay, " + n + " insertions instead of " + insertions
                                + " would settle it");
            }
        }
        return new Reason(
                "on-the-limit",
                Map.of("u", u),
                "on the limit: the value lies too near it for the uncertainty (u = " + Numbers.rounded(u, 2) + unit()
                        + ")"
                        + (insertionPart > 0
                                ? ", and up to " + MOST_INSERTIONS + " insertions would not settle it"
                                : ""));
    }

    /** What can be said of a share. */
    String said(ShareErrors share) {
        double percent = 100 * share.shareAtLeast(limit, confidence);
        return "of " + share.count() + " measured, it can be said with " + Numbers.rounded(100 * confidence, 1)
                + " % confidence that at least " + Numbers.rounded(Math.floor(10 * percent) / 10, 1)
                + " % of all lie inside the limit";
    }

    private String unit() {
        return limit.unit().symbol().isEmpty() ? "" : " " + limit.unit().symbol();
    }

    private boolean isTooWide(double u) {
        if (!limit.hasLower() || !limit.hasUpper()) {
            return false;
        }
        double half = (limit.upper() - limit.lower()) / 2;
        return 2 * new NormalErrors(u).atMost(half) - 1 < confidence;
    }

    private boolean isSettled(double value, double u) {
        NormalErrors errors = new NormalErrors(u);
        double lower = limit.hasLower() ? errors.atLeast(limit.lower() - value) : 1;
        double upper = limit.hasUpper() ? errors.atMost(limit.upper() - value) : 1;
        double error = 1 - confidence;
        return 1 - (lower + upper - 1) <= error || Math.min(lower, upper) <= error / points;
    }
}
