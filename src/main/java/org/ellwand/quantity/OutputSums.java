package org.ellwand.quantity;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ellwand.claim.Rule;

/** What the output level and the quantities that are found in it, A-weighted, have in common. */
final class OutputSums {
    private OutputSums() {}

    /** The level with the product in place; referred to the field, less the open-ear gain. */
    static List<CurvePart> parts(Rule rule) {
        return rule.referredToField()
                ? List.of(new CurvePart(1, 1, -1, 1, 0, Optional.empty(), Optional.empty()))
                : List.of(CurvePart.inPlace(1));
    }

    /** Common keys, but for the weighting, which is A. */
    static Set<String> usable(String... more) {
        Set<String> usable = new TreeSet<>(SpectralQuantity.usable(more));
        usable.remove("weighting");
        return usable;
    }
}
