package org.ellwand.quantity;

import java.util.Comparator;
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
            new Rating());

    /** As documentation and messages list them. */
    private static final List<String> ORDER = List.of(
            "attenuation",
            "insertion gain",
            "output level",
            "response",
            "figure",
            "onset level",
            "criterion level",
            "attack time",
            "release time",
            "harmonic distortion",
            "equivalent input noise",
            "rating",
            "lower limiting frequency",
            "upper limiting frequency",
            "noise dose",
            "permissible duration",
            "level drift",
            "gain steadiness");

    private Quantities() {}

    /** What a claims reader must know: every quantity, also those that are not yet judged. */
    public static List<QuantityForm> forms() {
        return Stream.concat(ALL.stream().map(Quantity::form), LaterQuantities.forms().stream())
                .sorted(Comparator.comparingInt(form -> ORDER.indexOf(form.name())))
                .toList();
    }

    /** The quantity of a name; empty where it is known but not yet judged. */
    public static Optional<Quantity> named(String name) {
        return ALL.stream().filter(q -> q.form().name().equals(name)).findFirst();
    }
}
