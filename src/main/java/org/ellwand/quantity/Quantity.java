package org.ellwand.quantity;

import org.ellwand.claim.QuantityForm;

/** A quantity that claims may be about. */
public interface Quantity {
    /** {@return what a rule of it needs and may use} */
    QuantityForm form();
}
