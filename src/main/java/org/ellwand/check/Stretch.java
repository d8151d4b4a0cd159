package org.ellwand.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
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

    /** So many times what neighbouring means differ by elsewhere is a step. */
    private static final double JUMPS = 8;

    private static final double BEGINS = 0.05;

    private static final double AT_ONCE = 0.5;

    /** Half of what is normal lies within so many standard deviations. */
    private static final double NORMAL_MEDIAN = 0.6745;

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

    /** Of more than one sample. */
    Stretch withoutLast() {
        return new Stretch(levelDb.subList(0, levelDb.size() - 1));
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

    /**
     * By how much the level steps within this stretch, signed, in dB; 0 where it does not. A step is where the means of the {@code m} samples
     * after and before differ by more than {@link #JUMPS} times what they differ by elsewhere, for {@code m} of 1, 5 or a tenth of the stretch. What they
     * differ by elsewhere is the median of it divided by 0.6745, its standard deviation were it normal: one step reaches 2 m of them and does
     * not raise it, as it would raise the scatter about a line. Likeness of neighbours is in it without a model. Its size is the
     * median of all samples after less that of all before, so that a disturbance that passes is none; in the first twentieth, which passes too,
     * none is looked for. Half of it comes at once: a level without scatter that glides is none either. Of steady levels so many times are
     * reached once in 3000 stretches or less (simulated: 50 to 1000 samples, neighbours that correlate by 0 to 0.98).
     */
    double jumpDb() {
        double largest = 0;
        for (int m : new int[] {1, 5, Math.max(1, levelDb.size() / 10)}) {
            double size = jumpDb(m);
            largest = Math.abs(size) > Math.abs(largest) ? size : largest;
        }
        return largest;
    }

    private double jumpDb(int m) {
        double[] sums = sums();
        double[] off = new double[Math.max(0, levelDb.size() - 2 * m + 1)];
        int most = -1;
        for (int i = 0; i < off.length; i++) {
            off[i] = Math.abs(sums[i + 2 * m] - 2 * sums[i + m] + sums[i]) / m;
            most = i + m >= levelDb.size() * BEGINS && (most < 0 || off[i] > off[most]) ? i : most;
        }
        double elsewhere = median(Arrays.stream(off).boxed()) / NORMAL_MEDIAN;
        if (most < 0 || off[most] <= JUMPS * elsewhere) {
            return 0;
        }
        int at = most + m;
        double size = median(levelDb.subList(at, levelDb.size()).stream()) - median(levelDb.subList(0, at).stream());
        return off[most] > Math.abs(size) * AT_ONCE ? size : 0;
    }

    /** Of the samples before each, so that a mean of many costs no more than one of few. */
    private double[] sums() {
        double[] sums = new double[levelDb.size() + 1];
        for (int i = 0; i < levelDb.size(); i++) {
            sums[i + 1] = sums[i] + levelDb.get(i);
        }
        return sums;
    }

    /** The level that as many samples lie above as below. */
    double medianDb() {
        return median(levelDb.stream());
    }

    /** Standard deviation of a sample were it normal, from the median of the distances from the median. */
    double sampleDb() {
        double middle = medianDb();
        return median(levelDb.stream().map(level -> Math.abs(level - middle))) / NORMAL_MEDIAN;
    }

    private static double median(Stream<Double> some) {
        List<Double> sorted = some.sorted().toList();
        if (sorted.isEmpty()) {
            return 0;
        }
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }

    private static double mean(List<Double> some) {
        return some.stream().mapToDouble(d -> d).average().orElse(0);
    }
}
