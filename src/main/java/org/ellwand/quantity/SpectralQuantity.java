package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.claim.Rule;

/** A quantity that is computed, band by band, from the spectra of a cell. */
public interface SpectralQuantity extends Quantity {
    /** Keys that restrict the readings of any spectral quantity or say how several of them count. */
    Set<String> COMMON_KEYS = Set.of(
            "resolution",
            "weighting",
            "setting",
            "fit",
            "firmware",
            "ear",
            "side",
            "head",
            "unit",
            "session",
            "stimulus",
            "level",
            "level weighting",
            "between",
            "compared by",
            "ears",
            "units",
            "tolerance",
            "sense");

    /** Whether the readings in place are held against the open ear. */
    boolean isPaired();

    /**
     * The signed curves whose sum is the quantity. Per band, the quantity is the sum of the curves; overall, it is the
     * sum of the curves' energy-summed levels, each with its sign.
     */
    List<CurvePart> parts(Rule rule);

    /** The parts where the readings are differences already (attenuation or insertion gain); empty where impossible. */
    default List<CurvePart> partsOfDifferences(boolean attenuation) {
        return List.of();
    }

    /** What spectral quantities need in common, with the reasons that messages give. */
    static Map<String, String> needed(Map<String, String> more) {
        Map<String, String> all = new TreeMap<>(more);
        all.put("bands", "a curve is judged over stated bands");
        all.put("statistic", "a curve is not one number");
        return all;
    }

    static Set<String> usable(String... more) {
        Set<String> all = new TreeSet<>(COMMON_KEYS);
        all.addAll(Set.of(more));
        return all;
    }
}
