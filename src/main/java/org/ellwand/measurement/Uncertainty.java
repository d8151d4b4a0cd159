package org.ellwand.measurement;

import java.util.List;

/** What a session says of its uncertainty. */
public sealed interface Uncertainty {
    /**
     * The causes of a list, or of the built-in table.
     *
     * @param causes in the order of the file
     * @param typicalProbeTube whether they are those of {@link TypicalProbeTube}
     */
    record Declared(List<Cause> causes, boolean typicalProbeTube) implements Uncertainty {
        /**
         * Keeps a copy of the causes.
         *
         * @param causes in the order of the file
         * @param typicalProbeTube whether they are those of {@link TypicalProbeTube}
         */
        public Declared {
            causes = List.copyOf(causes);
        }
    }

    /** {@code uncertainty: unknown}. */
    record Unknown() implements Uncertainty {}
}
