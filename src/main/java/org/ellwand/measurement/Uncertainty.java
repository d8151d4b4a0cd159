package org.ellwand.measurement;

import java.util.List;

/** What a session says of its uncertainty. */
public sealed interface Uncertainty {
    /** The causes of a list, or of the built-in table. */
    record Declared(List<Cause> causes, boolean typicalProbeTube) implements Uncertainty {
        public Declared {
            causes = List.copyOf(causes);
        }
    }

    /** {@code uncertainty: unknown}. */
    record Unknown() implements Uncertainty {}
}
