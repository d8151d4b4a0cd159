/** From a rule to the readings it speaks of: selection, open-ear pairing, cells. */
@NullMarked
package org.ellwand.pairing;

import org.jspecify.annotations.NullMarked;
