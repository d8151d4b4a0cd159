package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Target;

/**
 * Level with the product in place relative to its own level at a reference, dB per band; with a target, less the target
 * relative to the target's own level at the same reference.
 */
final class Response implements SpectralQuantity {
    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "response",
                Dimension.LEVEL_DIFFERENCE,
                SpectralQuantity.needed(Map.of("reference", "a response is relative to something")),
                SpectralQuantity.usable("target"),
                "dB per band",
                "level with the product in place relative to the reference");
    }

    @Override
    public List<CurvePart> parts(Rule rule) {
        CurvePart own = new CurvePart(1, 1, 0, 0, 0, Optional.empty(), rule.reference());
        return rule.target().map(target -> List.of(own, target(target, rule))).orElse(List.of(own));
    }

    private static CurvePart target(Target target, Rule rule) {
        Optional<Spectrum> sheet = target instanceof Target.Sheet s ? Optional.of(s.curve()) : Optional.empty();
        return new CurvePart(-1, 0, sheet.isPresent() ? 0 : 1, 0, 0, sheet, rule.reference());
    }
}
