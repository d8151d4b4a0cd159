/** Bands, spectra, frequency weightings, energy sums, level traces and exposure; each formula with its clause. */
@NullMarked
package org.ellwand.acoustics;

import org.jspecify.annotations.NullMarked;
