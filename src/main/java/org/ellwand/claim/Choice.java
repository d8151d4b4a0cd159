package org.ellwand.claim;

import java.util.List;

/** Which values of a condition a rule speaks of. */
public sealed interface Choice {
    /**
     * {@return whether readings of this value are meant}
     *
     * @param value of the condition, as the session writes it
     */
    boolean accepts(String value);

    /** Every value, said on purpose. */
    record All() implements Choice {
        @Override
        public boolean accepts(String value) {
            return true;
        }
    }

    /**
     * These names, as written.
     *
     * @param names at least one
     */
    record OneOf(List<String> names) implements Choice {
        /**
         * Keeps a copy of the names.
         *
         * @param names at least one
         */
        public OneOf {
            names = List.copyOf(names);
        }

        @Override
        public boolean accepts(String value) {
            return names.contains(value);
        }
    }
}
