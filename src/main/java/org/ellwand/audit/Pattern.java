package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Insertion;
import org.ellwand.quantity.Computation;
import org.ellwand.quantity.ReadingIndex;

/**
 * How the numbers of a subject hang on its readings, whichever readings these are. The subjects of a lot differ in levels and
 * in names alone: what the declared causes do to the numbers of one they do to those of every other of the same pattern.
 */
final class Pattern {
    private final int[] readings;
    private final List<Reading> own;
    private final List<Object> same = new ArrayList<>();
    private int[] structure = new int[64];
    private int size;
    private double[] numbers = new double[32];
    private int count;

    private Pattern(int[] readings, ReadingIndex index) {
        this.readings = readings;
        own = new ArrayList<>(readings.length);
        for (int reading : readings) {
            own.add(index.at(reading));
        }
    }

    /**
     * The pattern of a subject; absent where its numbers are not linear in levels in closed form, or where what was
     * subtracted from a reading tells it from others.
     *
     * @param readings their positions, ascending
     */
    static Optional<Pattern> of(
            Subject subject, Computation computation, int[] readings, ReadingIndex index, Surroundings surroundings) {
        Pattern pattern = new Pattern(readings, index);
        boolean told = true;
        for (Reading reading : pattern.own) {
            told &= reading instanceof CurveReading curve && curve.subtracted().isEmpty();
        }
        pattern.put(computation.size());
        if (!told || !computation.addShape(pattern.new Shaped())) {
            return Optional.empty();
        }
        for (Reading reading : pattern.own) {
            pattern.add(CurveReading.of(reading), surroundings);
        }
        pattern.putShares(r -> surroundings.insertion(r).map(Insertion::key).orElse(""));
        pattern.putShares(surroundings::wearer);
        pattern.putShares(r -> r.get("unit").orElse(""));
        subject.repeats().forEach(pattern::add);
        return Optional.of(pattern);
    }

    /** Takes in how the numbers hang on levels. */
    private final class Shaped implements Computation.Shape {
        @Override
        public void reading(int position) {
            put(Arrays.binarySearch(readings, position));
        }

        @Override
        public void number(double factor) {
            put(factor);
        }

        @Override
        public void same(Object shared) {
            same.add(shared);
        }
    }

    private void add(CurveReading reading, Surroundings surroundings) {
        same.add(surroundings.session(reading));
        same.add(reading.spectrum().bandList());
        same.add(reading.values());
        put(reading.isInPlace() ? 1 : 0);
    }

    /** For each reading, the first one that shares something with it. */
    private void putShares(Function<Reading, String> shared) {
        List<String> names = new ArrayList<>(own.size());
        for (Reading reading : own) {
            String name = shared.apply(reading);
            names.add(name);
            put(name.isEmpty() ? -1 : names.indexOf(name));
        }
    }

    private void add(Repeats repeats) {
        put(repeats.count());
        put(repeats.weight());
        for (Repeats.Member member : repeats.members()) {
            for (Reading reading : own) {
                put(member.readings().contains(reading) ? 1 : 0);
            }
        }
    }

    private void put(int number) {
        if (size == structure.length) {
            structure = Arrays.copyOf(structure, 2 * size);
        }
        structure[size++] = number;
    }

    private void put(double number) {
        if (count == numbers.length) {
            numbers = Arrays.copyOf(numbers, 2 * count);
        }
        numbers[count++] = number;
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // Sessions and lists of bands are shared; another one counts as another.
    public boolean equals(Object other) {
        if (!(other instanceof Pattern that) || same.size() != that.same.size()) {
            return false;
        }
        for (int i = 0; i < same.size(); i++) {
            if (same.get(i) != that.same.get(i)) {
                return false;
            }
        }
        return Arrays.equals(structure, 0, size, that.structure, 0, that.size)
                && Arrays.equals(numbers, 0, count, that.numbers, 0, that.count);
    }

    @Override
    public int hashCode() {
        int hash = 31 * size + count;
        for (int i = 0; i < size; i++) {
            hash = 31 * hash + structure[i];
        }
        return hash;
    }
}
