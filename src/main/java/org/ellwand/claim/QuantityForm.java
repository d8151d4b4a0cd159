package org.ellwand.claim;

import java.util.Map;
import java.util.Set;
import org.ellwand.amount.Dimension;

/**
 * What the claims reader must know of a quantity: which keys a rule of it needs and may use. The quantities hand these
 * over; the reader does not know them.
 *
 * @param name as written in a claims file
 * @param dimension what its limit is measured in; {@link Dimension#NONE} where the reading decides (a figure)
 * @param needed the keys it cannot do without, each with the reason that an error message gives
 * @param usable further keys it may use
 * @param unitText the unit as documentation prints it
 * @param definition one sentence for the documentation
 */
public record QuantityForm(
        String name,
        Dimension dimension,
        Map<String, String> needed,
        Set<String> usable,
        String unitText,
        String definition) {}
