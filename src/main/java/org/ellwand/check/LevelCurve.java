package org.ellwand.check;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.acoustics.Band;

/**
 * Numbers by band, lowest band first: a list of bands, which all curves of a sheet may share, and an array beside it. A lot
 * has a hundred thousand curves, and every check looks at each of them. Not to be changed.
 */
final class LevelCurve {
    static final LevelCurve EMPTY = new LevelCurve(List.of(), new double[0]);

    /** The list that this curve's bands are in, and the first of them: curves cut alike out of one list have the same bands. */
    private final List<Band> whole;

    private final int from;
    private final List<Band> bands;
    private final double[] numbers;

    /** Makes one number of another, knowing its band. */
    interface Change {
        double of(Band band, double number);
    }

    /** Takes in a number with its band. */
    interface Use {
        void take(Band band, double number);
    }

    /**
     * @param bands ascending, not changed later
     * @param numbers one for each band; the curve's own from now on
     */
    LevelCurve(List<Band> bands, double[] numbers) {
        this(bands, 0, bands, numbers);
    }

    private LevelCurve(List<Band> whole, int from, List<Band> bands, double[] numbers) {
        this.whole = whole;
        this.from = from;
        this.bands = bands;
        this.numbers = numbers;
    }

    /** Other numbers at the same bands; the curve's own from now on. */
    LevelCurve with(double[] other) {
        return new LevelCurve(whole, from, bands, other);
    }

    static LevelCurve of(Map<Band, Double> map) {
        NavigableMap<Band, Double> sorted = new TreeMap<>(map);
        return new LevelCurve(
                List.copyOf(sorted.keySet()),
                sorted.values().stream().mapToDouble(d -> d).toArray());
    }

    /** Its numbers by band; a new map. */
    Map<Band, Double> asMap() {
        Map<Band, Double> map = new TreeMap<>();
        forEach(map::put);
        return map;
    }

    List<Band> bands() {
        return bands;
    }

    /** The numbers, lowest band first; not to be changed. */
    double[] numbers() {
        return numbers;
    }

    int size() {
        return numbers.length;
    }

    boolean isEmpty() {
        return numbers.length == 0;
    }

    /** The lowest of the bands, of which there is at least one. */
    Band lowest() {
        return bands.get(0);
    }

    /** The place of the highest number, the first of equals; there is at least one. */
    int highest() {
        int highest = 0;
        for (int b = 1; b < numbers.length; b++) {
            highest = numbers[b] > numbers[highest] ? b : highest;
        }
        return highest;
    }

    /** The bands from one of them on. */
    List<Band> bandsFrom(Band band) {
        return bands.subList(place(band), bands.size());
    }

    void forEach(Use use) {
        for (int b = 0; b < numbers.length; b++) {
            use.take(bands.get(b), numbers[b]);
        }
    }

    /** The number of a band, or another where the band is not there. */
    double levelOr(Band band, double other) {
        int at = place(band);
        return at < 0 ? other : numbers[at];
    }

    /** The place of a band among the bands; negative where it is not there. */
    int place(Band band) {
        if (bands.isEmpty()) {
            return -1;
        }
        // Hardly a sheet leaves out a band.
        int guess = band.index() - bands.get(0).index();
        return guess >= 0 && guess < numbers.length && bands.get(guess).compareTo(band) == 0
                ? guess
                : Collections.binarySearch(bands, band);
    }

    /** Whether the bands are the same. */
    @SuppressWarnings("ReferenceEquality") // Mostly they are one list.
    boolean hasBandsOf(LevelCurve other) {
        return numbers.length == other.numbers.length
                && ((whole == other.whole && from == other.from) || bands.equals(other.bands));
    }

    /**
     * The place of the band that lies some steps beside another; negative where it is not there.
     *
     * @param place of the other
     */
    int beside(int place, int steps) {
        int at = place + steps;
        int index = bands.get(place).index() + steps;
        if (at >= 0 && at < numbers.length && bands.get(at).index() == index) {
            return at;
        }
        return place(new Band(bands.get(place).resolution(), index));
    }

    /** The part between two nominal frequencies in Hz, both included. */
    LevelCurve between(double fromHz, double toHz) {
        int first = placeFrom(fromHz);
        int end = numbers.length;
        while (end > first && bands.get(end - 1).nominalHz() > toHz) {
            end--;
        }
        return part(first, end);
    }

    /** The place of the first band from a nominal frequency in Hz on; behind the last one where there is none. */
    int placeFrom(double hz) {
        int place = 0;
        while (place < numbers.length && bands.get(place).nominalHz() < hz) {
            place++;
        }
        return place;
    }

    /** The part from one place to before another. */
    LevelCurve part(int first, int end) {
        return end - first == numbers.length
                ? this
                : new LevelCurve(
                        whole, from + first, bands.subList(first, end), Arrays.copyOfRange(numbers, first, end));
    }

    /** The curve at bands that it has. */
    LevelCurve at(List<Band> some) {
        return new LevelCurve(
                some, some.stream().mapToDouble(b -> numbers[place(b)]).toArray());
    }

    /** Every number changed. */
    LevelCurve changed(DoubleUnaryOperator change) {
        double[] changed = new double[numbers.length];
        for (int b = 0; b < changed.length; b++) {
            changed[b] = change.applyAsDouble(numbers[b]);
        }
        return with(changed);
    }

    /** Every number changed by what its band is. */
    LevelCurve changed(Change change) {
        double[] changed = new double[numbers.length];
        for (int b = 0; b < changed.length; b++) {
            changed[b] = change.of(bands.get(b), numbers[b]);
        }
        return with(changed);
    }

    /** Every number turned round. */
    LevelCurve negated() {
        return changed(number -> -number);
    }
}
