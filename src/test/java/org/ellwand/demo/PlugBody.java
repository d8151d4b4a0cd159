package org.ellwand.demo;

/**
 * What passes through the body of a plug and round it through bone. The body is a mass on a damped spring: held by
 * stiffness below its resonance, by mass above, transmission 1 / (s |1 − (f/f₀)² + j f / (Q f₀)|), s the stiffness over
 * that of the air behind it. Bone conduction passes at −42 dB and bounds every plug. Form: textbook; sizes: common
 * practice, no source.
 *
 * @param stiffnessDb 20 lg s, the attenuation at the lowest frequencies
 */
public record PlugBody(double stiffnessDb, double resonanceHz, double quality) {
    private static final double BONE_DB = -42;

    public double gainDb(double frequencyHz) {
        double x = frequencyHz / resonanceHz;
        double bodyDb = -stiffnessDb - 20 * Math.log10(Math.hypot(1 - x * x, x / quality));
        return Bands.energySumDb(bodyDb, BONE_DB);
    }
}
