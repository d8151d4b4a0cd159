package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;

/**
 * Attenuation: level of the open ear less level with the product in place, dB per band; same session, ear and stimulus.
 * Overall: difference of the energy-summed levels. (Insertion loss by microphone: common practice of real-ear
 * measurement, IEC 61669 from memory.)
 */
final class Attenuation implements SpectralQuantity {
    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "attenuation",
                Dimension.LEVEL_DIFFERENCE,
                SpectralQuantity.needed(Map.of("level", "what a product takes off depends on the level it is given")),
                SpectralQuantity.usable(),
                "dB per band",
                "level of the open ear less level with the product in place; same session, ear and stimulus");
    }

    @Override
    public List<CurvePart> parts(Rule rule) {
        return List.of(CurvePart.openEar(1), CurvePart.inPlace(-1));
    }

    @Override
    public List<CurvePart> partsOfDifferences(boolean attenuation) {
        return List.of(CurvePart.inPlace(attenuation ? 1 : -1));
    }
}
