package org.ellwand.sound;

import java.util.List;
import java.util.Locale;
import org.ellwand.statistics.Seeds;

/** The sounds that a measurement plays. Levels are root mean squares in dB re full scale, whose mean square is 1. */
public final class Stimuli {
    private static final double SETTLE_S = 0.5;

    private Stimuli() {}

    /**
     * Pink noise at one or several levels, one after the other: for band levels, and for an onset where there are many.
     *
     * @param rateHz samples per second
     * @param levelsDb root mean square of each in dB re full scale
     * @param crestDb peak over root mean square
     * @param seconds how long each lasts at least; it is made longer to whole periods and one more to settle in
     * @param seed the same gives the same noise
     * @return the programme, one part a level
     */
    public static Programme pink(int rateHz, List<Double> levelsDb, double crestDb, double seconds, String seed) {
        double[] period = PinkNoise.of(rateHz, amplitude(crestDb), Seeds.of("stimulus", seed));
        int repeats = (int) Math.ceil(seconds * rateHz / period.length - 1e-9);
        double loudest = levelsDb.stream().mapToDouble(d -> d).max().orElseThrow();
        ProgrammeBuilder builder = new ProgrammeBuilder(rateHz, amplitude(loudest));
        int settle = (int) (SETTLE_S * rateHz);
        for (double levelDb : levelsDb) {
            double[] sound = new double[repeats * period.length + settle + (int) (ProgrammeBuilder.RAMP_S * rateHz)];
            for (int i = 0; i < sound.length; i++) {
                sound[i] = amplitude(levelDb) * period[i % period.length];
            }
            builder.part(String.format(Locale.ROOT, "pink noise at %.1f dB", levelDb), sound, SETTLE_S);
        }
        return builder.done();
    }

    /**
     * A tone that steps to another level and back, for attack and release.
     *
     * @param rateHz samples per second
     * @param toneHz frequency of the tone, in Hz
     * @param lowDb root mean square before and after, in dB re full scale
     * @param highDb root mean square between, in dB re full scale; it may be the lower one
     * @param seconds how long each of the three levels lasts
     * @return the programme, one part a step
     */
    public static Programme step(int rateHz, double toneHz, double lowDb, double highDb, double seconds) {
        ProgrammeBuilder builder = new ProgrammeBuilder(rateHz, amplitude(Math.max(lowDb, highDb)));
        int third = (int) Math.round(seconds * rateHz);
        double[] sound = new double[3 * third];
        for (int i = 0; i < sound.length; i++) {
            double levelDb = i / third == 1 ? highDb : lowDb;
            sound[i] = Math.sqrt(2) * amplitude(levelDb) * Math.sin(2 * Math.PI * toneHz * i / rateHz);
        }
        builder.steps(sound, seconds, List.of(step(toneHz, highDb - lowDb), step(toneHz, lowDb - highDb)));
        return builder.done();
    }

    private static String step(double toneHz, double byDb) {
        return String.format(Locale.ROOT, "%.0f Hz, %s by %.1f dB", toneHz, byDb > 0 ? "up" : "down", Math.abs(byDb));
    }

    /**
     * {@return tones one after the other, for distortion}
     *
     * @param rateHz samples per second
     * @param tonesHz in Hz, in the order in which they are played
     * @param levelDb root mean square of each, in dB re full scale
     * @param seconds how long each lasts, without half a second to settle in
     */
    public static Programme tones(int rateHz, List<Double> tonesHz, double levelDb, double seconds) {
        ProgrammeBuilder builder = new ProgrammeBuilder(rateHz, amplitude(levelDb));
        for (double toneHz : tonesHz) {
            double[] sound = new double[(int) Math.round((seconds + SETTLE_S) * rateHz)];
            for (int i = 0; i < sound.length; i++) {
                sound[i] = Math.sqrt(2) * amplitude(levelDb) * Math.sin(2 * Math.PI * toneHz * i / rateHz);
            }
            builder.part(String.format(Locale.ROOT, "%.0f Hz", toneHz), sound, SETTLE_S);
            builder.gap();
        }
        return builder.done();
    }

    private static double amplitude(double levelDb) {
        return Math.pow(10, levelDb / 20);
    }
}
