package org.ellwand.audit;

import java.util.List;
import org.ellwand.claim.Product;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.quantity.Outcome;
import org.ellwand.quantity.Quantities;
import org.ellwand.quantity.SpectralQuantity;

/**
 * What stands behind a judgement of an invented session: readings, effects and errors.
 *
 * @param preparation readings and factors
 * @param evaluation values and errors by point
 */
record Workings(Preparation preparation, Evaluation evaluation) {
    static Workings of(String stated, Outcome outcome, Session... sessions) {
        return of(Bench.product(stated), outcome, sessions);
    }

    static Workings of(Product product, Outcome outcome, Session... sessions) {
        Rule rule = product.claims().get(0).rule().orElseThrow();
        SpectralQuantity quantity = (SpectralQuantity) Quantities.named(rule.quantity());
        try {
            Subjects.Built built = Subjects.of(rule, quantity, product.name(), List.of(sessions));
            Preparation preparation = new Preparation(rule, quantity, built);
            return new Workings(preparation, Evaluation.of(preparation, rule, outcome, AuditOptions.DEFAULT_TRIALS));
        } catch (InputException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** The only subject. */
    Estimates estimates() {
        return evaluation.subjects().get(0);
    }

    /** Linear draws of the only subject by point. */
    double[][] draws(int trials) {
        double[][] errors = new double[estimates().size()][trials];
        new Draws(estimates(), trials).next(errors, trials);
        return errors;
    }
}
