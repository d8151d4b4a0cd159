package org.ellwand.audit;

import java.util.List;
import org.ellwand.amount.Interval;
import org.ellwand.statistics.BinomialShare;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.Limits;
import org.ellwand.statistics.NormalSample;
import org.ellwand.statistics.NormalShare;
import org.ellwand.statistics.ShareEvidence;

/**
 * The errors of a mean over people or products whose claim is about a share of them: what is said of the mean is the
 * mean's, what is said of a limit is said of the share (normal tolerance statement; Clopper and Pearson where values are
 * only in or out).
 */
final class ShareErrors implements Errors {
    private final Errors ofMean;
    private final List<Double> values;
    private final double share;
    private final double commonDeviation;
    private final boolean inOrOut;

    private ShareErrors(Errors ofMean, List<Double> values, double share, double commonDeviation, boolean inOrOut) {
        this.ofMean = ofMean;
        this.values = List.copyOf(values);
        this.share = share;
        this.commonDeviation = commonDeviation;
        this.inOrOut = inOrOut;
    }

    /**
     * Of a normal population.
     *
     * @param values of each person or product, at least two
     * @param share wanted, above 0 and below 1
     * @param commonDeviation of what shifts all values together
     */
    static ShareErrors normal(Errors ofMean, List<Double> values, double share, double commonDeviation) {
        return new ShareErrors(ofMean, values, share, commonDeviation, false);
    }

    /** Of values of which is known only whether they are inside. */
    static ShareErrors inOrOut(Errors ofMean, List<Double> values, double share) {
        return new ShareErrors(ofMean, values, share, 0, true);
    }

    /** The confidence that the share is inside a limit, and how probable it is to look this bad were it just the share. */
    Ends ends(Interval limit) {
        ShareEvidence evidence = evidence(limit);
        double bad = evidence.chanceThisBad(share);
        return new Ends(bad, bad, evidence.confidence(share));
    }

    /** The share that can be said to be inside a limit with a confidence. */
    double shareAtLeast(Interval limit, double confidence) {
        return evidence(limit).shareAtLeast(confidence);
    }

    int count() {
        return values.size();
    }

    private ShareEvidence evidence(Interval limit) {
        if (inOrOut) {
            int inside = (int) values.stream().filter(limit::contains).count();
            return new BinomialShare(values.size(), inside);
        }
        double mean = values.stream().mapToDouble(v -> v).average().orElseThrow();
        boolean equal = values.stream().allMatch(v -> v.equals(values.get(0)));
        double squares =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        double deviation = equal ? 0 : Math.sqrt(squares / (values.size() - 1.0));
        return new NormalShare(
                new NormalSample(values.size(), Ends.onEnd(mean, limit), deviation),
                new Limits(limit.lower(), limit.upper()),
                commonDeviation);
    }

    @Override
    public double atMost(double x) {
        return ofMean.atMost(x);
    }

    @Override
    public double atLeast(double x) {
        return ofMean.atLeast(x);
    }

    @Override
    public double quantile(double probability) {
        return ofMean.quantile(probability);
    }

    @Override
    public double standardUncertainty() {
        return ofMean.standardUncertainty();
    }
}
