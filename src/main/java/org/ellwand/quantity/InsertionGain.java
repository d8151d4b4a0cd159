package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;

/** Insertion gain: minus attenuation, dB per band (IEC 61669, from memory). */
final class InsertionGain implements SpectralQuantity {
    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "insertion gain",
                Dimension.LEVEL_DIFFERENCE,
                SpectralQuantity.needed(Map.of("level", "what a product adds depends on the level it is given")),
                SpectralQuantity.usable(),
                "dB per band",
                "level with the product in place less level of the open ear: minus attenuation");
    }

    @Override
    public List<CurvePart> parts(Rule rule) {
        return List.of(CurvePart.inPlace(1), CurvePart.openEar(-1));
    }

    @Override
    public List<CurvePart> partsOfDifferences(boolean attenuation) {
        return List.of(CurvePart.inPlace(attenuation ? -1 : 1));
    }
}
