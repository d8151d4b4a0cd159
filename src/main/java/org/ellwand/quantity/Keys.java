package org.ellwand.quantity;

import java.util.Set;
import java.util.TreeSet;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;

/** What rules about single numbers may use. */
final class Keys {
    private Keys() {}

    /** What any spectral quantity may use, but for what only bands have. */
    static Set<String> ofNumbers() {
        Set<String> keys = new TreeSet<>(SpectralQuantity.COMMON_KEYS);
        keys.removeAll(Set.of("resolution", "weighting"));
        return keys;
    }

    /** One number a cell, and each must hold. */
    static Rule ofOneNumber(Rule rule) {
        return rule.with(Statistic.MEAN, rule.weighting());
    }
}
