package org.ellwand.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a programme together: silence, the sync mark, silence, and then part after part. */
final class ProgrammeBuilder {
    /** How long the ramps of a part are; what is measured ends before the last. */
    static final double RAMP_S = 0.02;

    private static final double GAP_S = 0.5;

    private final int rateHz;
    private final List<double[]> pieces = new ArrayList<>();
    private final List<Programme.Part> parts = new ArrayList<>();
    private long frames;

    ProgrammeBuilder(int rateHz, double markRms) {
        this.rateHz = rateHz;
        silence(GAP_S);
        double[] mark = SyncMark.samples(rateHz);
        // A tone of amplitude a has the root mean square a/√2; the ramps take a little.
        add(scaled(mark, Math.min(0.99, markRms * Math.sqrt(2))));
        silence(GAP_S);
    }

    private static double[] scaled(double[] samples, double factor) {
        double[] scaled = samples.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor;
        }
        return scaled;
    }

    private void add(double[] piece) {
        pieces.add(piece);
        frames += piece.length;
    }

    /** Half a second of silence. */
    void gap() {
        silence(GAP_S);
    }

    private void silence(double seconds) {
        add(new double[(int) Math.round(seconds * rateHz)]);
    }

    /** Adds a sound with ramps; what is measured of it leaves the beginning and the end out. */
    void part(String what, double[] sound, double settleS) {
        double fromS = (double) frames / rateHz - GAP_S;
        ramp(sound);
        add(sound);
        double toS = (double) frames / rateHz - GAP_S;
        parts.add(new Programme.Part(what, fromS + settleS, toS - RAMP_S, Optional.empty()));
    }

    /**
     * Adds a sound that steps from level to level, with ramps at its ends. Each step is a part of its own, from the middle of the level before it
     * to the end of the one behind.
     *
     * @param eachS how long each level lasts
     * @param steps what each step is
     */
    void steps(double[] sound, double eachS, List<String> steps) {
        double startS = (double) frames / rateHz - GAP_S;
        ramp(sound);
        add(sound);
        for (int i = 0; i < steps.size(); i++) {
            double fromS = startS + (i + 0.5) * eachS;
            double toS = startS + (i + 2) * eachS - RAMP_S;
            parts.add(new Programme.Part(steps.get(i), fromS, toS, Optional.of(eachS / 2)));
        }
    }

    private void ramp(double[] sound) {
        int length = (int) (RAMP_S * rateHz);
        for (int i = 0; i < length; i++) {
            double edge = Math.pow(Math.sin(Math.PI / 2 * i / length), 2);
            sound[i] *= edge;
            sound[sound.length - 1 - i] *= edge;
        }
    }

    Programme done() {
        silence(GAP_S);
        double[] all = new double[Math.toIntExact(frames)];
        int at = 0;
        for (double[] piece : pieces) {
            System.arraycopy(piece, 0, all, at, piece.length);
            at += piece.length;
        }
        return new Programme(List.copyOf(parts), rateHz, all);
    }
}
