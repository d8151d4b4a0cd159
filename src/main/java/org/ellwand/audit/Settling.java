package org.ellwand.audit;

import java.util.function.IntFunction;
import org.ellwand.amount.Interval;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.words.Figures;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;

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
    Remark of(Points.One point, double insertionPart, int insertions) {
        double u = point.errors().standardUncertainty();
        return of(point, insertions, insertionPart > 0, n -> {
            double fewer = insertionPart * insertionPart * (1 - (double) insertions / n);
            return new NormalErrors(Math.sqrt(Math.max(0, u * u - fewer)));
        });
    }

    /**
     * The same where the errors of more insertions are known otherwise.
     *
     * @param divides whether more insertions make them smaller at all
     * @param ofMore the errors of so many insertions
     */
    Remark of(Points.One point, int insertions, boolean divides, IntFunction<Errors> ofMore) {
        double u = point.errors().standardUncertainty();
        if (point.errors() instanceof ShareErrors share) {
            return Remark.of("share-open").with("measured", share.count()).with("said", said(share));
        }
        if (!Double.isFinite(u)) {
            return Remark.of("series-open");
        }
        if (isTooWide(u)) {
            double needed = (limit.upper() - limit.lower()) / 2 / NormalErrors.z((1 + confidence) / 2);
            return Remark.of("too-wide").with("u", measure(u)).with("needed", measure(needed));
        }
        for (int n = insertions + 1; divides && n <= MOST_INSERTIONS; n++) {
            if (isSettled(point.value(), ofMore.apply(n))) {
                return Remark.of("too-few-insertions")
                        .with("insertions", insertions)
                        .with("needed", n);
            }
        }
        return divides
                ? Remark.of("on-the-limit-however-many").with("u", measure(u)).with("insertions", MOST_INSERTIONS)
                : Remark.of("on-the-limit").with("u", measure(u));
    }

    /** What can be said of a share. */
    Remark said(ShareErrors share) {
        double percent = 100 * share.shareAtLeast(limit, confidence);
        return Remark.of("share-said")
                .with("measured", share.count())
                .with("confidence", Figures.rounded(100 * confidence, 1))
                .with("share", Figures.rounded(Math.floor(10 * percent) / 10, 1));
    }

    private Measure measure(double value) {
        return new Measure(value, limit.unit().ofDifferences().symbol());
    }

    private boolean isTooWide(double u) {
        if (!limit.hasLower() || !limit.hasUpper()) {
            return false;
        }
        double half = (limit.upper() - limit.lower()) / 2;
        return 2 * new NormalErrors(u).atMost(half) - 1 < confidence;
    }

    private boolean isSettled(double value, Errors errors) {
        double lower = limit.hasLower() ? errors.atLeast(limit.lower() - value) : 1;
        double upper = limit.hasUpper() ? errors.atMost(limit.upper() - value) : 1;
        double error = 1 - confidence;
        return 1 - (lower + upper - 1) <= error || Math.min(lower, upper) <= error / points;
    }
}
