package org.ellwand.check;

import org.ellwand.acoustics.Band;
import org.ellwand.measurement.CurveReading;
import org.ellwand.words.Remark;

/**
 * A number that was written down wrong.
 *
 * @param reading it stands in
 * @param band it stands at
 * @param measure how far it is from what it may be
 * @param remark what is said of it
 */
record Slip(CurveReading reading, Band band, Finding.Measure measure, Remark remark) {}
