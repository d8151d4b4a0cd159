package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.acoustics.Resolution;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.words.Remark;

/** A quantity that is computed, band by band, from spectra. */
public interface SpectralQuantity extends CellQuantity {
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

    /**
     * The signed curves whose sum is the quantity. Per band, the quantity is the sum of the curves; overall, it is the
     * sum of the curves' energy-summed levels, each with its sign.
     *
     * @param rule of this quantity
     * @return the curves, each with its sign
     */
    List<CurvePart> parts(Rule rule);

    /**
     * {@return the parts where the readings are differences already; empty where there are no such parts}
     *
     * @param attenuation whether the readings are attenuation, not insertion gain
     */
    default List<CurvePart> partsOfDifferences(boolean attenuation) {
        return List.of();
    }

    @Override
    default boolean usesOpenEar(Rule rule) {
        return parts(rule).stream().anyMatch(p -> p.openEar() != 0);
    }

    @Override
    default Formula formula(Joined joined, Rule rule) {
        return formula(joined.first(), rule);
    }

    /**
     * {@return how the curve of one cell is computed}
     *
     * @param cell readings in place, and their open ear
     * @param rule of this quantity
     */
    default CellFormula formula(Cell cell, Rule rule) {
        List<CurvePart> parts = switch (cell.values()) {
            case LEVELS, NUMBER -> parts(rule);
            case ATTENUATION, SUBJECT_ATTENUATION -> partsOfDifferences(true);
            case INSERTION_GAIN -> partsOfDifferences(false);
        };
        return new CellFormula(cell, Optional.empty(), parts);
    }

    /** Differences cannot be summed as energies, nor be turned back into levels. */
    @Override
    default Optional<Remark> unusable(Joined joined, Rule rule) {
        return joined.cells().stream()
                .flatMap(cell -> unusable(cell, rule).stream())
                .findFirst();
    }

    private Optional<Remark> unusable(Cell cell, Rule rule) {
        String session = cell.session().id();
        if (parts(rule).stream().anyMatch(p -> p.field() != 0) && cell.field().isEmpty()) {
            return Optional.of(Remark.of("no-field-reading").with("session", session));
        }
        boolean serves = cell.values() == Reading.Values.LEVELS
                || (!formula(cell, rule).parts().isEmpty()
                        && !rule.statistic().equals(Optional.of(Statistic.OVERALL))
                        && rule.resolution()
                                .filter(r -> r.isCoarserThan(resolutionOf(cell)))
                                .isEmpty());
        return serves
                ? Optional.empty()
                : Optional.of(Remark.of("differences-only").with("session", session));
    }

    private static Resolution resolutionOf(Cell cell) {
        return CurveReading.of(cell.insertions().get(0).takes().get(0))
                .spectrum()
                .resolution();
    }

    /**
     * {@return what spectral quantities need in common, with the reasons that messages give}
     *
     * @param more what this quantity needs beside, by key
     */
    static Map<String, String> needed(Map<String, String> more) {
        Map<String, String> all = new TreeMap<>(more);
        all.put("bands", "a curve is judged over stated bands");
        all.put("statistic", "a curve is not one number");
        return all;
    }

    /**
     * {@return the keys that a spectral quantity may use, {@link #COMMON_KEYS} among them}
     *
     * @param more keys of this quantity alone
     */
    static Set<String> usable(String... more) {
        Set<String> all = new TreeSet<>(COMMON_KEYS);
        all.addAll(Set.of(more));
        return all;
    }
}
