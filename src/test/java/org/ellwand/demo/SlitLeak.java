package org.ellwand.demo;

/**
 * Air path past a tip: a narrow slit into the air left between plug and eardrum. Acoustic resistance
 * R = 12 η l / (w h³) and mass M = 6 ρ l / (5 w h) of a slit of length l, width w and height h, compliance
 * C = V / (ρ c²) of the air behind it; pressure behind over pressure before: 1 / (1 − ω² M C + j ω R C). Textbook
 * formulas (L. L. Beranek, Acoustics, from memory). Sizes of slit and volume: common practice, no source.
 *
 * @param heightMm h in mm
 */
public record SlitLeak(double heightMm) {
    private static final double LENGTH_M = 0.012;
    private static final double WIDTH_M = 0.002;
    private static final double VOLUME_M3 = 1e-6;
    private static final double DENSITY = 1.14;
    private static final double SOUND_SPEED = 353;
    private static final double VISCOSITY = 1.9e-5;

    /** Level behind the slit over level before it, dB. */
    public double gainDb(double frequencyHz) {
        double h = heightMm / 1000;
        double omega = 2 * Math.PI * frequencyHz;
        double compliance = VOLUME_M3 / (DENSITY * SOUND_SPEED * SOUND_SPEED);
        double resistance = 12 * VISCOSITY * LENGTH_M / (WIDTH_M * h * h * h);
        double mass = 6 * DENSITY * LENGTH_M / (5 * WIDTH_M * h);
        return -20 * Math.log10(Math.hypot(1 - omega * omega * mass * compliance, omega * resistance * compliance));
    }
}
