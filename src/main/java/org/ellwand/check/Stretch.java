package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Step;
import org.ellwand.measurement.Trace;

/**
 * A stretch of a trace that is to be steady.
 *
 * @param levelDb its samples in order
 */
record Stretch(List<Double> levelDb) {
    /**
     * Fewer samples, and fewer that would be independent of each other, tell no scatter: with these a steady level is taken for a moving one, at six
     * standard deviations, once in 2000 traces or less (simulated for neighbours that correlate by 0 to 0.9).
     */
    static final int FEWEST = 50;

    private static final int FEWEST_INDEPENDENT = 8;

    /** Samples of a meter that averages resemble their neighbours; beyond this nothing can be told. */
    private static final double MOST_ALIKE = 0.98;

    Stretch {
        levelDb = List.copyOf(levelDb);
    }

    /** The samples from one time on, and before another. */
    static Stretch of(Trace trace, double fromS, double toS) {
        List<Double> levels = new ArrayList<>();
        for (int i = 0; i < trace.timeS().size(); i++) {
            double t = trace.timeS().get(i);
            if (t >= fromS && t < toS) {
                levels.add(trace.levelDb().get(i));
            }
        }
        return new Stretch(levels);
    }

    static double atS(Step step) {
        return step.at().in(Unit.SECOND);
    }

    /** Whether there are enough samples. */
    boolean isLongEnough() {
        return levelDb.size() >= FEWEST;
    }

    /** Whether its scatter can be told from a bend. */
    boolean isTold() {
        return independent(aboutTheLine()) >= FEWEST_INDEPENDENT;
    }

    /** Root mean square of what lies about the straight line. */
    double bendDb() {
        double squares = 0;
        for (double one : aboutTheLine()) {
            squares += one * one;
        }
        return Math.sqrt(squares / levelDb.size());
    }

    /** The mean of its second half less that of its first. */
    double changeDb() {
        int half = levelDb.size() / 2;
        return mean(levelDb.subList(levelDb.size() - half, levelDb.size())) - mean(levelDb.subList(0, half));
    }

    /**
     * Standard deviation of {@link #changeDb} were the level steady: from what lies about the straight line, with as many samples
     * as would be independent, n (1 − r)/(1 + r) where neighbours correlate by r (first-order autoregression: from memory).
     */
    double scatterDb() {
        double[] off = aboutTheLine();
        double squares = 0;
        for (double one : off) {
            squares += one * one;
        }
        return Math.sqrt(squares / (off.length - 2)) * 2 / Math.sqrt(independent(off));
    }

    /** What a line through the samples takes of their likeness, (2 + 4 r)/n about, is given back. */
    private static double independent(double[] off) {
        double squares = 0;
        double products = 0;
        for (int i = 0; i < off.length; i++) {
            squares += off[i] * off[i];
            products += i > 0 ? off[i] * off[i - 1] : 0;
        }
        if (squares == 0) {
            return off.length;
        }
        double alike = products / squares;
        alike = Math.max(0, Math.min(MOST_ALIKE, alike + (2 + 4 * alike) / off.length));
        return off.length * (1 - alike) / (1 + alike);
    }

    private double[] aboutTheLine() {
        int n = levelDb.size();
        double mean = mean(levelDb);
        double middle = (n - 1) / 2.0;
        double slope = 0;
        double spread = 0;
        for (int i = 0; i < n; i++) {
            slope += (i - middle) * (levelDb.get(i) - mean);
            spread += (i - middle) * (i - middle);
        }
        double[] off = new double[n];
        for (int i = 0; i < n; i++) {
            off[i] = levelDb.get(i) - mean - slope / spread * (i - middle);
        }
        return off;
    }

    private static double mean(List<Double> some) {
        return some.stream().mapToDouble(d -> d).average().orElse(0);
    }
}
