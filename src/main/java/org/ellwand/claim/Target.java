package org.ellwand.claim;

import org.ellwand.acoustics.Spectrum;

/** What a response is compared with. */
public sealed interface Target {
    /** The same ear, open. */
    record OpenEar() implements Target {}

    /**
     * A curve sheet in {@code claims/}.
     *
     * @param file path relative to the audited folder
     * @param curve levels in dB by band
     */
    record Sheet(String file, Spectrum curve) implements Target {}
}
