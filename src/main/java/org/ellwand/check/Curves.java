package org.ellwand.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Energy;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;

/** Arithmetic on curves: levels or differences in dB by band, the lowest band first. */
final class Curves {
    private Curves() {}

    /** The mean in dB of curves at the bands that they all have. */
    static LevelCurve mean(List<LevelCurve> curves) {
        return curves.size() == 1 ? curves.get(0) : combined(curves, Curves::average);
    }

    /** The numbers of a curve, to be changed. (The quick compiler takes its time over a clone.) */
    private static double[] copy(LevelCurve curve) {
        return Arrays.copyOf(curve.numbers(), curve.size());
    }

    /** What some make of the numbers of several curves, which it may put in order, band by band, at the bands that they all have. */
    private static LevelCurve combined(List<LevelCurve> curves, ToDoubleFunction<double[]> of) {
        List<LevelCurve> common = onCommonBands(curves);
        if (common.isEmpty()) {
            return LevelCurve.EMPTY;
        }
        double[] combined = new double[common.get(0).size()];
        double[] numbers = new double[common.size()];
        for (int b = 0; b < combined.length; b++) {
            for (int c = 0; c < numbers.length; c++) {
                numbers[c] = common.get(c).numbers()[b];
            }
            combined[b] = of.applyAsDouble(numbers);
        }
        return common.get(0).with(combined);
    }

    /** The parts of curves between two frequencies in Hz, at the bands that they all have. */
    static List<LevelCurve> between(List<LevelCurve> curves, double fromHz, double toHz) {
        return List.copyOf(onCommonBands(
                curves.stream().map(curve -> between(curve, fromHz, toHz)).toList()));
    }

    private static List<LevelCurve> onCommonBands(List<LevelCurve> curves) {
        boolean common = true;
        for (LevelCurve curve : curves) {
            common &= curve.hasBandsOf(curves.get(0));
        }
        if (common) {
            return curves;
        }
        List<Band> bands = curves.get(0).bands().stream()
                .filter(band -> curves.stream().allMatch(c -> c.place(band) >= 0))
                .toList();
        return curves.stream().map(c -> c.at(bands)).toList();
    }

    /** One curve less another, at the bands that both have. */
    static LevelCurve less(LevelCurve one, LevelCurve other) {
        List<LevelCurve> both = onCommonBands(List.of(one, other));
        double[] difference = copy(both.get(0));
        double[] subtrahend = both.get(1).numbers();
        for (int b = 0; b < difference.length; b++) {
            difference[b] -= subtrahend[b];
        }
        return both.get(0).with(difference);
    }

    /** The part of a curve between two frequencies in Hz, both included. */
    static LevelCurve between(LevelCurve curve, double fromHz, double toHz) {
        return curve.between(fromHz, toHz);
    }

    static double average(LevelCurve curve) {
        return average(curve.numbers());
    }

    private static double average(double[] numbers) {
        DoubleSummaryStatistics sum = new DoubleSummaryStatistics();
        for (double number : numbers) {
            sum.accept(number);
        }
        return sum.getAverage();
    }

    static double rootMeanSquare(LevelCurve curve) {
        double[] squares = copy(curve);
        for (int b = 0; b < squares.length; b++) {
            squares[b] *= squares[b];
        }
        return Math.sqrt(average(squares));
    }

    /** Standard deviation over the bands. */
    static double deviation(LevelCurve curve) {
        double mean = average(curve);
        double squares =
                Arrays.stream(curve.numbers()).map(d -> (d - mean) * (d - mean)).sum();
        return curve.size() < 2 ? 0 : Math.sqrt(squares / (curve.size() - 1));
    }

    static double overallDb(LevelCurve curve, Weighting weighting) {
        double[] weighted = copy(curve);
        for (int b = 0; b < weighted.length && weighting != Weighting.Z; b++) {
            weighted[b] += Weights.db(weighting, curve.bands().get(b));
        }
        return Energy.sumDb(weighted);
    }

    /** Whether the bands are as narrow as a resolution, or narrower. */
    static boolean isAsFineAs(Resolution resolution, LevelCurve curve) {
        return !curve.isEmpty() && !curve.lowest().resolution().isCoarserThan(resolution);
    }

    /** The median of numbers of which there is at least one. */
    static double median(List<Double> numbers) {
        return median(numbers.stream().mapToDouble(d -> d).toArray());
    }

    static double median(double[] numbers) {
        double[] sorted = Arrays.copyOf(numbers, numbers.length);
        Arrays.sort(sorted);
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }

    /** The median of curves, band by band, at the bands that they all have. */
    static LevelCurve medianOf(List<LevelCurve> curves) {
        return combined(curves, Curves::median);
    }

    /**
     * What a curve that lies low is held against, band by band: the median of others, which one faulty among three does not move. Two have no
     * middle: the lower of them, so that nothing is said of one because the other lies high.
     */
    static LevelCurve lowerMedianOf(List<LevelCurve> curves) {
        return combined(curves, numbers -> {
            Arrays.sort(numbers);
            return numbers[(numbers.length - 1) / 2];
        });
    }

    /** Whether curves agree to within some dB over some bands, on average, where there are two; more are told by their median. */
    static boolean agree(List<LevelCurve> curves, List<Band> bands, double withinDb) {
        if (curves.size() != 2) {
            return true;
        }
        LevelCurve apart = less(curves.get(0), curves.get(1));
        return Math.abs(average(apart, bands)) < withinDb;
    }

    /** The longest run of neighbouring bands among some, lowest first; the lowest of equals. */
    static List<Band> longestRun(Collection<Band> bands) {
        List<Band> longest = List.of();
        List<Band> run = new ArrayList<>();
        for (Band band : bands) {
            if (!run.isEmpty() && band.index() != run.get(run.size() - 1).index() + 1) {
                run = new ArrayList<>();
            }
            run.add(band);
            longest = run.size() > longest.size() ? List.copyOf(run) : longest;
        }
        return longest;
    }

    /** What may hold of a number in a band. */
    interface BandPredicate {
        boolean isSo(Band band, double number);
    }

    /** The longest run where a curve meets a condition, if it is as wide as five third octaves; else nothing. */
    static List<Band> wideRun(LevelCurve curve, BandPredicate wanted) {
        List<Band> found = new ArrayList<>();
        curve.forEach((band, level) -> {
            if (wanted.isSo(band, level)) {
                found.add(band);
            }
        });
        List<Band> run = longestRun(found);
        boolean wide =
                !run.isEmpty() && 3 * run.size() >= 5 * run.get(0).resolution().bandsPerOctave();
        return wide ? run : List.of();
    }

    /** The mean of a curve over some of its bands. */
    static double average(LevelCurve curve, List<Band> bands) {
        return bands.stream().mapToDouble(b -> curve.levelOr(b, 0.0)).average().orElse(0);
    }

    /** The level at a nominal frequency in Hz. */
    static Optional<Double> at(LevelCurve curve, double nominalHz) {
        int place = curve.placeFrom(nominalHz);
        boolean there = place < curve.size() && curve.bands().get(place).nominalHz() == nominalHz;
        return there ? Optional.of(curve.numbers()[place]) : Optional.empty();
    }

    /** Nominal frequencies in Hz, for a finding. */
    static List<Double> hertz(Iterable<Band> bands) {
        List<Double> hertz = new ArrayList<>();
        bands.forEach(band -> hertz.add(band.nominalHz()));
        return hertz;
    }
}
