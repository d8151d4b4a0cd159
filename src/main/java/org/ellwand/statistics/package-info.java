/** Distributions of errors, seeded draws, tolerance factors and shares of a population. No word of acoustics. */
@NullMarked
package org.ellwand.statistics;

import org.jspecify.annotations.NullMarked;
