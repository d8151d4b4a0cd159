package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;

/** Quantities whose claims are read and printed, and say that they are not yet judged. */
final class LaterQuantities {
    private static final Set<String> CONDITIONS = conditions();

    private LaterQuantities() {}

    static List<QuantityForm> forms() {
        return List.of(
                onset(),
                criterion(),
                time("attack time"),
                time("release time"),
                distortion(),
                noise(),
                limit("lower limiting frequency", "lowest"),
                limit("upper limiting frequency", "highest"),
                dose(),
                duration(),
                drift(),
                steadiness());
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

    private static QuantityForm criterion() {
        return new QuantityForm(
                "criterion level",
                Dimension.LEVEL,
                Map.of(
                        "bands",
                        "a level is summed over stated bands",
                        "criterion",
                        "the level at the ear that is looked for",
                        "referred to",
                        "an eardrum reads 5 to 10 dB(A) above the field"),
                with("resolution", "limit weighting"),
                "dB of the stimulus level",
                "input level at which the A-weighted output level reaches the criterion");
    }

    private static QuantityForm limit(String name, String end) {
        return new QuantityForm(
                name,
                Dimension.FREQUENCY,
                Map.of(
                        "bands",
                        "a range is looked for among stated bands",
                        "drop",
                        "a range ends where the level has fallen by a stated amount",
                        "reference",
                        "a response is relative to something"),
                with("resolution"),
                "Hz",
                end + " frequency at which the response has not yet fallen by drop, seen from the reference");
    }

    private static QuantityForm dose() {
        return new QuantityForm(
                "noise dose",
                Dimension.SHARE,
                exposed(Map.of("duration", "a dose is gathered over a time")),
                with("resolution"),
                "%",
                "duration over the duration that the exposure rule allows at the A-weighted output level, times 100");
    }

    private static QuantityForm duration() {
        return new QuantityForm(
                "permissible duration",
                Dimension.TIME,
                exposed(Map.of()),
                with("resolution"),
                "h",
                "duration that the exposure rule allows at the A-weighted output level");
    }

    private static Map<String, String> exposed(Map<String, String> more) {
        Map<String, String> all = new TreeMap<>(more);
        all.put("bands", "a level is summed over stated bands");
        all.put("level", "what comes out depends on the level that goes in");
        all.put("exposure", "laws and recommendations differ in what they allow");
        all.put("referred to", "an eardrum reads 5 to 10 dB(A) above the field, where the rules hold");
        return all;
    }

    private static QuantityForm drift() {
        return new QuantityForm(
                "level drift",
                Dimension.LEVEL_DIFFERENCE,
                Map.of(),
                CONDITIONS,
                "dB",
                "mean level of the last fifth of a steady trace less that of its first fifth");
    }

    private static QuantityForm steadiness() {
        return new QuantityForm(
                "gain steadiness",
                Dimension.SHARE,
                Map.of("within", "steady means within a stated distance of the mean gain"),
                CONDITIONS,
                "%",
                "share of 125 ms frames whose insertion gain lies within a stated distance of the mean gain");
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
