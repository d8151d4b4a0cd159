package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.quantity.Computation;
import org.ellwand.quantity.ReadingIndex;

/**
 * How the numbers of a subject hang on its readings, whichever readings these are. The subjects of a lot differ in levels and
 * in names alone: what the declared causes do to the numbers of one they do to those of every other of the same pattern.
 */
final class Pattern {
    private final List<Object> same = new ArrayList<>();
    private int[] structure = new int[256];
    private int size;
    private double[] slopes = new double[64];
    private int slopeCount;

    private Pattern() {}

    /**
     * The pattern of a subject; absent where its numbers are not linear in levels in closed form, or where what was
     * subtracted from a reading tells it from others.
     *
     * @param readings their positions, ascending
     */
    static Optional<Pattern> of(
            Subject subject,
            Computation computation,
            List<Integer> readings,
            ReadingIndex index,
            Surroundings surroundings) {
        Pattern pattern = new Pattern();
        List<Reading> own = readings.stream().map(index::at).toList();
        boolean told = own.stream()
                .allMatch(r ->
                        r instanceof CurveReading curve && curve.subtracted().isEmpty());
        pattern.put(computation.size());
        boolean closed = told
                && computation.addSlopes(1, (reading, band, point, slope) -> {
                    pattern.put(readings.indexOf(reading));
                    pattern.put(band);
                    pattern.put(point);
                    pattern.put(slope);
                });
        if (!closed) {
            return Optional.empty();
        }
        own.forEach(r -> pattern.add(CurveReading.of(r), surroundings));
        pattern.putShares(own, r -> surroundings.insertion(r).map(i -> i.key()).orElse(""));
        pattern.putShares(own, r -> surroundings.wearer(r));
        pattern.putShares(own, r -> r.get("unit").orElse(""));
        subject.repeats().forEach(repeats -> pattern.add(repeats, own));
        return Optional.of(pattern);
    }

    private void add(CurveReading reading, Surroundings surroundings) {
        same.add(surroundings.session(reading));
        same.add(reading.spectrum().bandList());
        same.add(reading.values());
        put(reading.isInPlace() ? 1 : 0);
    }

    /** For each reading, the first one that shares something with it. */
    private void putShares(List<Reading> readings, Function<Reading, String> shared) {
        List<String> names = readings.stream().map(shared).toList();
        names.forEach(name -> put(name.isEmpty() ? -1 : names.indexOf(name)));
    }

    private void add(Repeats repeats, List<Reading> readings) {
        put(repeats.count());
        put(repeats.weight());
        for (Repeats.Member member : repeats.members()) {
            for (int r = 0; r < readings.size(); r++) {
                put(member.readings().contains(readings.get(r)) ? 1 : 0);
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
        if (slopeCount == slopes.length) {
            slopes = Arrays.copyOf(slopes, 2 * slopeCount);
        }
        slopes[slopeCount++] = number;
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
                && Arrays.equals(slopes, 0, slopeCount, that.slopes, 0, that.slopeCount);
    }

    @Override
    public int hashCode() {
        int hash = 31 * size + slopeCount;
        for (int i = 0; i < size; i++) {
            hash = 31 * hash + structure[i];
        }
        return hash;
    }
}
