package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;

/** Quantities whose claims are read and printed, and say that they are not yet judged. */
final class LaterQuantities {
    private static final Set<String> CONDITIONS = conditions();

    private LaterQuantities() {}

    static List<QuantityForm> forms() {
        return List.of(rating());
    }

    private static QuantityForm rating() {
        return new QuantityForm(
                "rating",
                Dimension.LEVEL_DIFFERENCE,
                Map.of("of", "ratings differ", "method", "each rating has its own rule of calculation"),
                with("performance", "table"),
                "dB",
                "SNR, H, M, L by ISO 4869-2; NRR by 40 CFR 211.207: re-computed, then compared with the printed figure");
    }

    /** What any spectral quantity may use, but for what only a sum over bands can. */
    private static Set<String> conditions() {
        Set<String> conditions = new TreeSet<>(SpectralQuantity.COMMON_KEYS);
        conditions.removeAll(Set.of("resolution", "weighting"));
        return conditions;
    }

    private static Set<String> with(String... more) {
        Set<String> all = new TreeSet<>(CONDITIONS);
        all.addAll(Set.of(more));
        return all;
    }
}
