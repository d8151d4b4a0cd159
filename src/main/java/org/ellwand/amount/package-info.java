/** Intervals, levels, frequencies and tolerances, and the phrases they are written in. */
@NullMarked
package org.ellwand.amount;

import org.jspecify.annotations.NullMarked;
