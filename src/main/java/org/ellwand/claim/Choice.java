package org.ellwand.claim;

import java.util.List;

/** Which values of a condition a rule speaks of. */
public sealed interface Choice {
    boolean accepts(String value);

    /** Every value, said on purpose. */
    record All() implements Choice {
        @Override
        public boolean accepts(String value) {
            return true;
        }
    }

    /** These names, as written. */
    record OneOf(List<String> names) implements Choice {
        public OneOf {
            names = List.copyOf(names);
        }

        @Override
        public boolean accepts(String value) {
            return names.contains(value);
        }
    }
}
