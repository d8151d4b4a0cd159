/** Bands, spectra, frequency weightings and energy sums; each formula with its clause. */
@NullMarked
package org.ellwand.acoustics;

import org.jspecify.annotations.NullMarked;
