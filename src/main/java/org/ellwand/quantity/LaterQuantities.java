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
        return List.of(onset(), time("attack time"), time("release time"), distortion(), noise(), rating());
    }

    private static QuantityForm onset() {
        return new QuantityForm(
                "onset level",
                Dimension.LEVEL,
                SpectralQuantity.needed(Map.of("drop", "an onset is where the gain has fallen by a stated amount")),
                with("resolution", "weighting", "limit weighting"),
                "dB of the stimulus level",
                "input level at which the insertion gain has fallen by drop below its value at the lowest level");
    }

    private static QuantityForm time(String name) {
        return new QuantityForm(
                name,
                Dimension.TIME,
                Map.of("within", "a time ends where the level stays within a stated distance of the steady level"),
                CONDITIONS,
                "ms",
                "from the step until the level stays within a stated distance of the new steady level");
    }

    private static QuantityForm distortion() {
        return new QuantityForm(
                "harmonic distortion",
                Dimension.SHARE,
                Map.of("harmonics", "a sum over harmonics names them"),
                CONDITIONS,
                "%",
                "100 · √(sum of the powers of the harmonics / power of the fundamental)");
    }

    private static QuantityForm noise() {
        return new QuantityForm(
                "equivalent input noise",
                Dimension.LEVEL_A,
                Map.of("bands", "a noise is summed over stated bands"),
                with("resolution", "limit weighting"),
                "dB(A)",
                "output level in quiet, each band less the insertion gain at the lowest level, A-weighted sum");
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
