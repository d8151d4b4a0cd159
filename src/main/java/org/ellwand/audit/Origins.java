package org.ellwand.audit;

import java.util.List;
import java.util.function.UnaryOperator;
import org.ellwand.measurement.Reading;

/** Where the factors of a subject come from. Those of the bands of one reading have one origin. */
final class Origins {
    private final Surroundings surroundings;
    private final List<Origin> each;
    private final int[] ofFactor;

    /** @param ofFactor for each factor, the place of its origin */
    Origins(Surroundings surroundings, List<Origin> each, int[] ofFactor) {
        this.surroundings = surroundings;
        this.each = List.copyOf(each);
        this.ofFactor = ofFactor;
    }

    /** The same of other readings. */
    Origins of(UnaryOperator<Reading> other) {
        List<Origin> moved =
                each.stream().map(o -> o.of(other.apply(o.reading()))).toList();
        return new Origins(surroundings, moved, ofFactor);
    }

    /** The place of a factor's origin among the origins. */
    int place(int factor) {
        return ofFactor[factor];
    }

    String cause(int place) {
        return each.get(place).cause();
    }

    /** By place, what the factors of each are shared by, as reports print it. */
    List<String> labels() {
        return each.stream().map(o -> o.label(surroundings)).toList();
    }
}
