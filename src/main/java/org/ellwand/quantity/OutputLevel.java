package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;

/**
 * Level measured with the product in place: dB SPL per band, dB(A), dB(C) or dB SPL overall. Referred to the field, each
 * band less the open-ear gain (open ear less field microphone of the same session), after the idea of ISO 11904-1 (scope
 * read in a public summary).
 */
final class OutputLevel implements SpectralQuantity {
    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "output level",
                Dimension.LEVEL,
                SpectralQuantity.needed(Map.of(
                        "level",
                        "what comes out depends on the level that goes in",
                        "referred to",
                        "an eardrum reads 5 to 10 dB(A) above the field, and judging one by the other condemns"
                                + " honest products")),
                SpectralQuantity.usable("limit weighting"),
                "dB SPL per band; dB(A), dB(C) or dB SPL overall",
                "level measured with the product in place; a noise floor is the output level under quiet");
    }

    @Override
    public List<CurvePart> parts(Rule rule) {
        return OutputSums.parts(rule);
    }
}
