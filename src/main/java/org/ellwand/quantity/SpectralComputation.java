package org.ellwand.quantity;

import java.util.Arrays;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Energy;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Reference;

/**
 * The curve of one cell, and the statistics of it that are one number.
 *
 * <p>Mean: arithmetic mean in dB over the bands. Slope: Σ (x − x̄) y / Σ (x − x̄)² with x = log2 of the exact mid-band
 * frequency. Overall: Σ over the parts of sign · 10 lg Σ 10^((L + W)/10), W the frequency weighting at the exact
 * mid-band frequency.
 */
final class SpectralComputation implements Computation {
    private static final double PER_DB = Math.log(10) / 10;

    private final Outcome outcome;
    private final List<Band> bands;
    private final List<SpectralPart> parts;
    private final double[] weightingDb;
    private final double[] slopeWeights;
    private final double[] curve;
    private final double[] part;
    private final boolean linear;

    SpectralComputation(Formula.Task task, Roles roles, List<CurvePart> curveParts, ReadingIndex index) {
        outcome = task.outcome();
        bands = task.bands();
        parts = curveParts.stream()
                .map(p -> new SpectralPart(p, roles, task, index))
                .toList();
        int size = task.bands().size();
        weightingDb = outcome == Outcome.OVERALL
                ? task.bands().stream()
                        .mapToDouble(b -> task.weighting().atDb(b.exactHz()))
                        .toArray()
                : new double[0];
        slopeWeights = outcome == Outcome.SLOPE ? slopeWeights(task.bands()) : new double[0];
        curve = new double[size];
        part = new double[size];
        linear = outcome != Outcome.OVERALL && parts.stream().noneMatch(SpectralPart::sumsBands);
    }

    @Override
    public int size() {
        return outcome.size(curve.length);
    }

    @Override
    public boolean isLinear() {
        return linear;
    }

    @Override
    public List<Integer> readings() {
        return parts.stream()
                .flatMapToInt(SpectralPart::readings)
                .distinct()
                .sorted()
                .boxed()
                .toList();
    }

    @Override
    public void compute(double[][] levelsDb, double[] out) {
        Arrays.fill(curve, 0);
        double overall = 0;
        for (SpectralPart each : parts) {
            each.compute(levelsDb, part);
            if (outcome == Outcome.OVERALL) {
                overall += each.sign() * overall(part);
            } else {
                add(each.sign());
            }
        }
        switch (outcome) {
            case CURVE -> System.arraycopy(curve, 0, out, 0, curve.length);
            case PAIRS -> pairs(out);
            case MEAN -> out[0] = Arrays.stream(curve).sum() / curve.length;
            case SLOPE -> out[0] = slope();
            case OVERALL -> out[0] = overall;
        }
    }

    @Override
    public boolean addSlopes(double factor, Slopes slopes) {
        if (linear) {
            parts.forEach(each -> each.addSlopes(factor * each.sign(), curve.length, (reading, at, band, slope) -> {
                ofOutcome(reading, at, band, slope, slopes);
            }));
        }
        return linear;
    }

    @Override
    public boolean addShape(Shape shape) {
        shape.same(outcome);
        shape.same(bands);
        parts.forEach(each -> each.addShape(shape));
        return linear;
    }

    /** What a slope of the curve in one band is to the numbers. */
    private void ofOutcome(int reading, int at, int band, double slope, Slopes slopes) {
        switch (outcome) {
            case CURVE -> slopes.add(reading, at, band, slope);
            case MEAN -> slopes.add(reading, at, 0, slope / curve.length);
            case SLOPE -> slopes.add(reading, at, 0, slope * slopeWeights[band]);
            case PAIRS -> ofPairs(reading, at, band, slope, slopes);
            case OVERALL -> throw new IllegalStateException("a sum of energies is not linear");
        }
    }

    private void ofPairs(int reading, int at, int band, double slope, Slopes slopes) {
        int pair = 0;
        for (int i = 0; i < curve.length; i++) {
            for (int j = i + 1; j < curve.length; j++) {
                if (i == band || j == band) {
                    slopes.add(reading, at, pair, i == band ? slope : -slope);
                }
                pair++;
            }
        }
    }

    private void add(double sign) {
        for (int b = 0; b < curve.length; b++) {
            curve[b] += sign * part[b];
        }
    }

    private void pairs(double[] out) {
        int at = 0;
        for (int i = 0; i < curve.length; i++) {
            for (int j = i + 1; j < curve.length; j++) {
                out[at++] = curve[i] - curve[j];
            }
        }
    }

    private double overall(double[] levels) {
        double sum = 0;
        for (int b = 0; b < levels.length; b++) {
            sum += Math.exp((levels[b] + weightingDb[b]) * PER_DB);
        }
        double sumDb = Math.log(sum) / PER_DB;
        return Double.isFinite(sumDb) ? sumDb : Energy.sumDb(weighted(levels));
    }

    private double[] weighted(double[] levels) {
        double[] weighted = levels.clone();
        Arrays.setAll(weighted, b -> levels[b] + weightingDb[b]);
        return weighted;
    }

    private double slope() {
        double sum = 0;
        for (int b = 0; b < curve.length; b++) {
            sum += slopeWeights[b] * curve[b];
        }
        return sum;
    }

    private static double[] slopeWeights(List<Band> bands) {
        double[] x = bands.stream()
                .mapToDouble(b -> Math.log(b.exactHz()) / Math.log(2))
                .toArray();
        double mean = Arrays.stream(x).average().orElse(0);
        double square = Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum();
        return Arrays.stream(x).map(v -> square == 0 ? 0 : (v - mean) / square).toArray();
    }

    /** The bands whose mean a response is relative to. */
    static List<Band> referenceBands(Reference reference, Resolution resolution) {
        if (reference instanceof Reference.MeanOf mean) {
            return Bandwidth.bands(mean.hz(), resolution);
        }
        double hz = ((Reference.At) reference).frequencyHz();
        return Bandwidth.bands(Interval.of(hz, hz, Unit.HZ), resolution);
    }
}
