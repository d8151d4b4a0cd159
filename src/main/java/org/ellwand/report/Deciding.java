package org.ellwand.report;

import java.util.Optional;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;

/** Finds the cell whose value is the claim's. */
final class Deciding {
    private Deciding() {}

    static Optional<CellResult> cell(Judgement judgement) {
        return judgement.cells().stream()
                .filter(cell -> judgement.value().isPresent()
                        && cell.value() == judgement.value().getAsDouble()
                        && cell.probability().equals(judgement.probability()))
                .findFirst()
                .or(() -> judgement.cells().stream().findFirst());
    }
}
