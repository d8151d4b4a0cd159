package org.ellwand.check;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Comparator;
import java.util.Iterator;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.jspecify.annotations.Nullable;

/**
 * Numbers by band, put down lowest band first. A tree of them is built at one go, without comparing band with band, which
 * counts where a lot has a hundred thousand curves and each is looked at many times.
 */
@SuppressWarnings("JdkObsolete") // Only of a SortedMap is a tree built without comparisons.
final class Ascending extends AbstractMap<Band, Double> implements SortedMap<Band, Double> {
    private final Band[] bands;
    private final double[] numbers;
    private int size;

    /** @param most bands that there may be */
    Ascending(int most) {
        bands = new Band[most];
        numbers = new double[most];
    }

    /** Adds a band above all so far. */
    void add(Band band, double number) {
        bands[size] = band;
        numbers[size++] = number;
    }

    NavigableMap<Band, Double> curve() {
        return new TreeMap<>((SortedMap<Band, Double>) this);
    }

    @Override
    public Set<Map.Entry<Band, Double>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public int size() {
                return size;
            }

            @Override
            public Iterator<Map.Entry<Band, Double>> iterator() {
                return new Entries();
            }
        };
    }

    private final class Entries implements Iterator<Map.Entry<Band, Double>> {
        private int next;

        @Override
        public boolean hasNext() {
            return next < size;
        }

        @Override
        public Map.Entry<Band, Double> next() {
            if (next == size) {
                throw new NoSuchElementException();
            }
            return Map.entry(bands[next], numbers[next++]);
        }
    }

    @Override
    public @Nullable Comparator<? super Band> comparator() {
        return null;
    }

    @Override
    public SortedMap<Band, Double> subMap(Band from, Band to) {
        return curve().subMap(from, to);
    }

    @Override
    public SortedMap<Band, Double> headMap(Band to) {
        return curve().headMap(to);
    }

    @Override
    public SortedMap<Band, Double> tailMap(Band from) {
        return curve().tailMap(from);
    }

    @Override
    public Band firstKey() {
        return at(0);
    }

    @Override
    public Band lastKey() {
        return at(size - 1);
    }

    private Band at(int place) {
        if (size == 0) {
            throw new NoSuchElementException();
        }
        return bands[place];
    }
}
