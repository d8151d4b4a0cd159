package org.ellwand.sound;

import org.ellwand.acoustics.Weighting;

/**
 * Measures a frequency-weighted sound: its energy, its peak, and its level under exponential time weighting, of which
 * maximum, percentiles and a trace are taken.
 *
 * <p>Time weighting: the mean square follows y' = (x² − y) / τ (IEC 61672-1: fast 125 ms, slow 1 s), which is exact for
 * samples held from one to the next. It starts from nothing: percentiles leave out the first 5 τ. What the listener is told is divided by the
 * weight that what was heard so far has, 1 − e^(−t/τ): it is the mean of that, weighted as the standard weights it, so that a steady sound has
 * its level from the first sample on, and a step that comes soon is none of what was before it.
 */
final class WeightedMeter {
    private static final double SETTLED = 5;

    private final Weighting weighting;
    private final WeightingFilter filter;
    private final double rateHz;
    private final double share;
    private final double[] work;
    private final LevelHistogram histogram = new LevelHistogram();
    private final LevelListener listener;
    private final double everySamples;
    private final double settledSamples;
    private final double timeConstantSamples;
    private final long late;
    private long before;
    private long seen;
    private long reports;
    private double weighted;
    /** What the listener is told, which goes on from before the part. */
    private double followed;

    private boolean goesOn;
    private double energy;
    private double sum;
    private double peak;
    private double highest;

    /**
     * @param rateHz of the samples that are fed
     * @param timeConstantS τ
     * @param late so many of the first samples are none of the sound yet
     * @param everyS how often the listener is told and the level counted
     * @param mostSamples longest block that is fed
     */
    WeightedMeter(
            Weighting weighting,
            double rateHz,
            long late,
            double timeConstantS,
            double everyS,
            int mostSamples,
            LevelListener listener) {
        this.weighting = weighting;
        this.filter = new WeightingFilter(weighting, rateHz);
        this.rateHz = rateHz;
        this.late = late;
        this.timeConstantSamples = timeConstantS * rateHz;
        this.share = -Math.expm1(-1 / (timeConstantS * rateHz));
        this.work = new double[mostSamples];
        this.listener = listener;
        this.everySamples = everyS * rateHz;
        this.settledSamples = SETTLED * timeConstantS * rateHz;
    }

    Weighting weighting() {
        return weighting;
    }

    void feed(double[] samples, int count) {
        System.arraycopy(samples, 0, work, 0, count);
        filter.filter(work, count);
        int at = 0;
        while (at < count) {
            long nextReport = (long) Math.ceil((reports + 1) * everySamples);
            int to = (int) Math.min(count, at + nextReport - seen);
            follow(at, to);
            seen += to - at;
            at = to;
            if (seen == nextReport) {
                report();
            }
        }
    }

    /** Lets the listener's levels go on from where another meter has come to. */
    void startFrom(WeightedMeter earlier) {
        followed = earlier.weighted;
        before = earlier.seen;
        goesOn = true;
    }

    private void follow(int from, int to) {
        double z = followed;
        for (int i = from; goesOn && i < to; i++) {
            z += share * (work[i] * work[i] - z);
        }
        followed = z < 1e-100 ? 0 : z;
        double y = weighted;
        double most = highest;
        double total = energy;
        double plain = sum;
        double top = peak;
        for (int i = from; i < to; i++) {
            double x = work[i];
            double square = x * x;
            y += share * (square - y);
            most = Math.max(most, y);
            top = Math.max(top, square);
            total += square;
            plain += x;
        }
        weighted = y < 1e-100 ? 0 : y;
        highest = most;
        energy = total;
        sum = plain;
        peak = top;
    }

    private void report() {
        reports++;
        double heard = before + Math.max(0, seen - late);
        double weight = -Math.expm1(-heard / timeConstantSamples);
        listener.level(seen / rateHz, 10 * Math.log10((goesOn ? followed : weighted) / weight));
        if (seen >= settledSamples) {
            histogram.add(weighted);
        }
    }

    /** What was measured so far. A constant is no sound, so the mean is taken off the energy. */
    WeightedLevels levels() {
        double mean = seen == 0 ? 0 : sum / seen;
        double meanSquare = seen == 0 ? 0 : Math.max(0, energy / seen - mean * mean);
        return new WeightedLevels(
                weighting,
                10 * Math.log10(meanSquare),
                10 * Math.log10(highest),
                10 * Math.log10(peak),
                histogram.exceededDb(0.05),
                histogram.exceededDb(0.10),
                histogram.exceededDb(0.50),
                histogram.exceededDb(0.90),
                histogram.exceededDb(0.95));
    }
}
