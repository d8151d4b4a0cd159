package org.ellwand.quantity;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ellwand.claim.QuantityForm;

/** The one list of quantities. */
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
            LimitingFrequency.lower(),
            LimitingFrequency.upper(),
            NoiseExposure.dose(),
            NoiseExposure.duration(),
            new DriftQuantity(),
            new SteadinessQuantity());

    private Quantities() {}

    /** What a claims reader must know: every quantity, also those that are not yet judged. */
    public static List<QuantityForm> forms() {
        return Stream.concat(ALL.stream().map(Quantity::form), LaterQuantities.forms().stream())
                .toList();
    }

    /** The quantity of a name; empty where it is known but not yet judged. */
    public static Optional<Quantity> named(String name) {
        return ALL.stream().filter(q -> q.form().name().equals(name)).findFirst();
    }
}
