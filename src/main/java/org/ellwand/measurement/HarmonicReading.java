package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;
import org.ellwand.words.Figures;

/**
 * The harmonics of one tone.
 *
 * @param conditions everything known of it
 * @param fundamental frequency of the tone; absent where no size of a cause depends on it
 * @param levelDbByOrder levels in dB; order 1 is the fundamental
 * @param place its first row
 */
public record HarmonicReading(
        Conditions conditions, Optional<Amount> fundamental, SortedMap<Integer, Double> levelDbByOrder, Place place)
        implements Reading {
    /** Stands in where the tone's frequency was not given and sizes do not depend on it. */
    private static final double ANY_HZ = 1000;

    /**
     * Keeps a copy of the levels, by rising order.
     *
     * @param conditions everything known of it
     * @param fundamental frequency of the tone
     * @param levelDbByOrder levels in dB
     * @param place its first row
     */
    public HarmonicReading {
        levelDbByOrder = Collections.unmodifiableSortedMap(new TreeMap<>(levelDbByOrder));
    }

    /**
     * {@return a reading of levels in any order}
     *
     * @param conditions everything known of it
     * @param fundamental frequency of the tone; absent where no size of a cause depends on it
     * @param levelDbByOrder levels in dB; order 1 is the fundamental
     * @param place its first row
     */
    public static HarmonicReading of(
            Conditions conditions, Optional<Amount> fundamental, Map<Integer, Double> levelDbByOrder, Place place) {
        return new HarmonicReading(conditions, fundamental, new TreeMap<>(levelDbByOrder), place);
    }

    /** {@return this reading with its tone among the conditions} */
    public HarmonicReading named() {
        return fundamental
                .map(f -> new HarmonicReading(
                        conditions.with(
                                "fundamental",
                                Figures.plain(f.value()) + " " + f.unit().symbol()),
                        fundamental,
                        levelDbByOrder,
                        place))
                .orElse(this);
    }

    @Override
    public Values values() {
        return Values.LEVELS;
    }

    @Override
    public double[] numbers() {
        return levelDbByOrder.values().stream().mapToDouble(d -> d).toArray();
    }

    /** {@return the orders that were measured, in the order of the numbers} */
    public List<Integer> orders() {
        return new ArrayList<>(levelDbByOrder.keySet());
    }

    @Override
    public double nominalHz(int number) {
        return orders().get(number) * fundamental.map(f -> f.in(Unit.HZ)).orElse(ANY_HZ);
    }

    @Override
    public Optional<Unit> movedBy() {
        return Optional.of(Unit.DB);
    }
}
