/** Draws, coverage intervals, joint probabilities and shares of a population. No word of acoustics. */
@NullMarked
package org.ellwand.statistics;

import org.jspecify.annotations.NullMarked;
