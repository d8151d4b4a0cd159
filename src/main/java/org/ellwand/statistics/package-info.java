/** Draws, coverage intervals and joint probabilities. No word of acoustics. */
@NullMarked
package org.ellwand.statistics;

import org.jspecify.annotations.NullMarked;
