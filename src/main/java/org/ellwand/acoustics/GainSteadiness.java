package org.ellwand.acoustics;

/**
 * How steady the gain of a product is over a programme: the share of frames whose gain lies within ± a stated distance of
 * the long-term gain. Two traces of the same programme on the same clock are compared, one with the product in place, one
 * with the open ear.
 *
 * <p>Frames of 125 ms follow one another from the first time that both have; that length is common practice for short-term
 * levels of speech (from memory). The level of a frame is 10 lg of the mean of 10^(L/10) over its samples, its gain the
 * level in place less that of the open ear. The long-term gain is the same difference over all samples of all frames. Each
 * sample stands for the mean distance between samples, so that a trace of n samples 125 ms apart has n frames; what is left
 * over at the end is no frame. Samples weigh alike however they are spaced: both traces have the same times, so a gain that is
 * steady is so under any weights.
 *
 * <p>Pauses of the programme count as frames: what is compared there is noise.
 */
public final class GainSteadiness {
    /** Length of a frame in s. */
    public static final double FRAME_S = 0.125;

    /** How far apart in s two times of one clock may be written. */
    public static final double CLOCK_TOLERANCE_S = 1e-4;

    private static final int FEWEST_FRAMES = 8;

    /** Gains that part by less than this from the stated distance lie on it: the rest is rounding. */
    private static final double ROUNDING_DB = 1e-9;

    private GainSteadiness() {}

    /**
     * In % of the frames.
     *
     * @param inPlace level with the product in place, in dB
     * @param openEar level of the same programme at the open ear, in dB
     * @param withinDb above 0
     * @return none where the clocks differ, a frame of the span is without samples, or fewer than eight frames are in
     *     common
     * @throws IllegalArgumentException where {@code withinDb} is not above 0
     */
    public static TraceNumber percent(LevelTrace inPlace, LevelTrace openEar, double withinDb) {
        if (!(withinDb > 0)) {
            throw new IllegalArgumentException("a distance is above 0 dB, not " + withinDb);
        }
        CommonSpan span = CommonSpan.of(inPlace, openEar);
        if (!span.isOneClock(CLOCK_TOLERANCE_S)) {
            return TraceNumber.none(NoNumber.CLOCKS_DIFFER);
        }
        int[] frameEnds = span.frameEnds(FRAME_S, CLOCK_TOLERANCE_S);
        if (frameEnds.length < FEWEST_FRAMES) {
            return TraceNumber.none(NoNumber.TOO_FEW_FRAMES);
        }
        return hasGap(frameEnds)
                ? TraceNumber.none(NoNumber.GAP)
                : TraceNumber.of(100.0 * steadyFrames(span, frameEnds, withinDb) / frameEnds.length);
    }

    private static boolean hasGap(int[] frameEnds) {
        int start = 0;
        for (int end : frameEnds) {
            if (end == start) {
                return true;
            }
            start = end;
        }
        return false;
    }

    private static int steadyFrames(CommonSpan span, int[] frameEnds, double withinDb) {
        double longTermDb = span.gainDb(0, frameEnds[frameEnds.length - 1]);
        int steady = 0;
        int start = 0;
        for (int end : frameEnds) {
            boolean within = Math.abs(span.gainDb(start, end) - longTermDb) <= withinDb + ROUNDING_DB;
            steady += within ? 1 : 0;
            start = end;
        }
        return steady;
    }
}
