package org.ellwand.quantity;

import java.util.List;
import org.ellwand.claim.QuantityForm;

/** The one list of quantities, in the order of documentation and messages. */
public final class Quantities {
    private static final List<Quantity> ALL = List.of(
            new Attenuation(),
            new InsertionGain(),
            new OutputLevel(),
            new Response(),
            new SingleFigure(),
            new OnsetLevel(),
            new CriterionLevel(),
            SettlingQuantity.attack(),
            SettlingQuantity.release(),
            new Distortion(),
            new EquivalentInputNoise(),
            new Rating(),
            LimitingFrequency.lower(),
            LimitingFrequency.upper(),
            NoiseExposure.dose(),
            NoiseExposure.duration(),
            new DriftQuantity(),
            new SteadinessQuantity());

    private Quantities() {}

    /** {@return what a claims reader must know of the quantities} */
    public static List<QuantityForm> forms() {
        return ALL.stream().map(Quantity::form).toList();
    }

    /**
     * The quantity of a name.
     *
     * @param name as a rule gives it
     * @return the quantity
     * @throws IllegalArgumentException where a rule names none, which the reader refuses
     */
    public static Quantity named(String name) {
        return ALL.stream()
                .filter(q -> q.form().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no quantity " + name));
    }
}
