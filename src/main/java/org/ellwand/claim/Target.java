package org.ellwand.claim;

import org.ellwand.acoustics.Spectrum;

/** What a response is compared with. */
public sealed interface Target {
    /** The same ear, open. */
    record OpenEar() implements Target {}

    /** A curve sheet in {@code claims/}. */
    record Sheet(String file, Spectrum curve) implements Target {}
}
