/** One class per quantity: what it needs and how it is computed from the readings of a cell. */
@NullMarked
package org.ellwand.quantity;

import org.jspecify.annotations.NullMarked;
