package org.ellwand.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.ellwand.measurement.Reading;

/** What the declared causes do to the numbers of a subject, and of every other of the same {@link Pattern}. */
final class Declared {
    private final List<Reading> readings;
    private final Effects effects;
    private final Origins origins;
    private final Map<Integer, double[][]> variances = new HashMap<>();

    /**
     * @param readings in the order of their positions
     * @param origins of the factors that the effects are of
     */
    Declared(List<Reading> readings, Effects effects, Origins origins) {
        this.readings = readings;
        this.effects = effects;
        this.origins = origins;
    }

    Effects effects() {
        return effects;
    }

    /** Where the factors of a subject of this pattern come from. */
    @SuppressWarnings("ReferenceEquality") // The very readings, not equal ones.
    Origins origins(List<Reading> own) {
        return origins.of(reading -> {
            for (int r = 0; r < readings.size(); r++) {
                if (readings.get(r) == reading) {
                    return own.get(r);
                }
            }
            return reading;
        });
    }

    /**
     * What insertion and reading causes let the numbers of each repeat scatter, by repeat and point.
     *
     * @param place of the repeats among those of a subject
     */
    double[][] variance(int place, Supplier<double[][]> workedOut) {
        return variances.computeIfAbsent(place, p -> workedOut.get());
    }
}
