package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;

/**
 * A ripple that repeats on a linear scale of frequency, as two paths of different length make it: 20 lg |1 + a e^(−j2πfτ)| has a period
 * of 1/τ and its first dip at 1/(2τ). Found by least squares: what a curve has beyond its average over an octave is fitted by a
 * cosine and a sine of f over τ, at those bands where a period is at least {@value #BANDS_PER_PERIOD} bandwidths long.
 *
 * @param delayMs the τ that explains most
 * @param depthDb from peak to dip of the fitted ripple
 * @param share of the squares explained, 0 to 1
 */
record Ripple(double delayMs, double depthDb, double share) {
    private static final double SHORTEST_MS = 0.4;
    private static final double LONGEST_MS = 10;
    private static final double STEP = 1.03;
    private static final double BANDS_PER_PERIOD = 2.5;
    private static final int FEWEST = 20;
    private static final double LOWEST_HZ = 200;

    /** The ripple of a curve that explains most of it; nothing where there are too few bands. */
    static Optional<Ripple> of(LevelCurve curve) {
        LevelCurve rest = beyondAverage(curve);
        Optional<Ripple> best = Optional.empty();
        for (double ms = SHORTEST_MS; ms <= LONGEST_MS; ms *= STEP) {
            Optional<Ripple> one = fit(rest, ms);
            if (one.isPresent()
                    && (best.isEmpty() || one.get().share() > best.get().share())) {
                best = one;
            }
        }
        return best;
    }

    private static LevelCurve beyondAverage(LevelCurve curve) {
        Map<Band, Double> rest = new TreeMap<>();
        for (int b = 0; b < curve.size(); b++) {
            Band band = curve.bands().get(b);
            int half = band.resolution().bandsPerOctave() / 2;
            int from = curve.beside(b, -half);
            int to = curve.beside(b, half);
            // At the ends the average would lie to one side.
            if (from >= 0 && to - from == 2 * half && band.exactHz() >= LOWEST_HZ) {
                rest.put(band, curve.numbers()[b] - Curves.average(curve.part(from, to + 1)));
            }
        }
        return LevelCurve.of(rest);
    }

    private static Optional<Ripple> fit(LevelCurve rest, double ms) {
        List<Band> bands = new ArrayList<>();
        for (Band band : rest.bands()) {
            double width = band.upperEdgeHz() - band.lowerEdgeHz();
            if (BANDS_PER_PERIOD * width <= 1000 / ms && band.exactHz() >= 500 / ms) {
                bands.add(band);
            }
        }
        if (bands.size() < FEWEST) {
            return Optional.empty();
        }
        double cc = 0;
        double ss = 0;
        double cs = 0;
        double yc = 0;
        double ys = 0;
        double yy = 0;
        for (Band band : bands) {
            double phase = 2 * Math.PI * band.exactHz() * ms / 1000;
            double y = rest.levelOr(band, 0.0);
            cc += Math.cos(phase) * Math.cos(phase);
            ss += Math.sin(phase) * Math.sin(phase);
            cs += Math.cos(phase) * Math.sin(phase);
            yc += y * Math.cos(phase);
            ys += y * Math.sin(phase);
            yy += y * y;
        }
        double determinant = cc * ss - cs * cs;
        if (determinant < 1e-9 || yy == 0) {
            return Optional.empty();
        }
        double a = (yc * ss - ys * cs) / determinant;
        double b = (ys * cc - yc * cs) / determinant;
        return Optional.of(new Ripple(ms, 2 * Math.hypot(a, b), (a * yc + b * ys) / yy));
    }
}
