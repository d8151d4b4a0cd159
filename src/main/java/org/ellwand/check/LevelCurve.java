package org.ellwand.check;

import java.util.AbstractCollection;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.Spliterator;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.jspecify.annotations.Nullable;

/**
 * Numbers by band, lowest band first: a list of bands, which all curves of a sheet may share, and an array beside it. A lot
 * has a hundred thousand curves, and every check looks at each of them. The bands stay, the numbers may be
 * replaced.
 */
final class LevelCurve extends ViewedByCopy {
    static final LevelCurve EMPTY = new LevelCurve(List.of(), new double[0]);

    private final List<Band> bands;
    private final double[] numbers;

    /**
     * @param bands ascending, not changed later
     * @param numbers one for each band; the curve's own from now on
     */
    LevelCurve(List<Band> bands, double[] numbers) {
        this.bands = bands;
        this.numbers = numbers;
    }

    /** A map as a curve: itself where it is one. */
    static LevelCurve of(Map<Band, Double> map) {
        if (map instanceof LevelCurve curve) {
            return curve;
        }
        NavigableMap<Band, Double> sorted = new TreeMap<>(map);
        return new LevelCurve(
                List.copyOf(sorted.keySet()),
                sorted.values().stream().mapToDouble(d -> d).toArray());
    }

    List<Band> bands() {
        return bands;
    }

    /** The numbers, lowest band first; not to be changed. */
    double[] numbers() {
        return numbers;
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
    @SuppressWarnings("ReferenceEquality") // Mostly they are one list, or parts of one.
    boolean hasBandsOf(LevelCurve other) {
        boolean same = bands.size() == other.bands.size();
        for (int b = 0; bands != other.bands && same && b < bands.size(); b++) {
            Band here = bands.get(b);
            Band there = other.bands.get(b);
            same = here == there || here.equals(there);
        }
        return same;
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

    LevelCurve part(BandPart part) {
        return new LevelCurve(part.bands(), Arrays.copyOfRange(numbers, part.from(), part.to()));
    }

    /** The curve at bands that it has. */
    LevelCurve at(List<Band> some) {
        return new LevelCurve(
                some, some.stream().mapToDouble(b -> numbers[place(b)]).toArray());
    }

    /** Turns every number round. */
    void negate() {
        for (int b = 0; b < numbers.length; b++) {
            numbers[b] = -numbers[b];
        }
    }

    LevelCurve copy() {
        return new LevelCurve(bands, numbers.clone());
    }

    @Override
    public int size() {
        return numbers.length;
    }

    @Override
    public boolean containsKey(@Nullable Object band) {
        return band instanceof Band b && place(b) >= 0;
    }

    @Override
    public @Nullable Double get(@Nullable Object band) {
        int at = band instanceof Band b ? place(b) : -1;
        return at < 0 ? null : (Double) numbers[at];
    }

    @Override
    public void forEach(BiConsumer<? super Band, ? super Double> use) {
        for (int i = 0; i < numbers.length; i++) {
            use.accept(bands.get(i), numbers[i]);
        }
    }

    @Override
    public void replaceAll(BiFunction<? super Band, ? super Double, ? extends Double> by) {
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = by.apply(bands.get(i), numbers[i]);
        }
    }

    @Override
    public Band firstKey() {
        return key(0);
    }

    @Override
    public Band lastKey() {
        return key(numbers.length - 1);
    }

    private Band key(int place) {
        if (numbers.length == 0) {
            throw new NoSuchElementException();
        }
        return bands.get(place);
    }

    @Override
    public Set<Band> keySet() {
        return new AbstractSet<>() {
            @Override
            public int size() {
                return numbers.length;
            }

            @Override
            public boolean contains(@Nullable Object band) {
                return containsKey(band);
            }

            @Override
            public Iterator<Band> iterator() {
                return bands.iterator();
            }

            @Override
            public Spliterator<Band> spliterator() {
                return bands.spliterator();
            }
        };
    }

    @Override
    public Collection<Double> values() {
        return new AbstractCollection<>() {
            @Override
            public int size() {
                return numbers.length;
            }

            @Override
            public Iterator<Double> iterator() {
                return Arrays.stream(numbers).iterator();
            }

            @Override
            public Spliterator<Double> spliterator() {
                return Arrays.stream(numbers).boxed().spliterator();
            }
        };
    }

    @Override
    public Set<Map.Entry<Band, Double>> entrySet() {
        IntFunction<Map.Entry<Band, Double>> entry = i -> Map.entry(bands.get(i), numbers[i]);
        return new AbstractSet<>() {
            @Override
            public int size() {
                return numbers.length;
            }

            @Override
            public Iterator<Map.Entry<Band, Double>> iterator() {
                return IntStream.range(0, numbers.length).mapToObj(entry).iterator();
            }
        };
    }
}
