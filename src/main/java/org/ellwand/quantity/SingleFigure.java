package org.ellwand.quantity;

import java.util.Map;
import java.util.Set;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;

/** A single measured figure: battery life, mass, charging time, … */
final class SingleFigure implements Quantity {
    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "figure",
                Dimension.NONE,
                Map.of("of", "a session may hold many figures"),
                Set.of(
                        "setting",
                        "fit",
                        "firmware",
                        "ear",
                        "side",
                        "head",
                        "unit",
                        "session",
                        "between",
                        "compared by",
                        "ears",
                        "units",
                        "tolerance",
                        "sense"),
                "any",
                "a single measured figure: battery life, mass, charging time");
    }
}
