/**
 * Recordings: WAV files, filters, time weighting, calibration, stimuli. Loops over samples run on arrays of doubles and make
 * no objects.
 */
@NullMarked
package org.ellwand.sound;

import org.jspecify.annotations.NullMarked;
