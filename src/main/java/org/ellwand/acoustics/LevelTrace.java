package org.ellwand.acoustics;

import java.util.Arrays;

/**
 * Levels in dB against time in s, as straight lines between samples.
 *
 * <p>A mean over a stretch of time is the integral of these lines over its length (trapezoids, cut at the ends of the
 * stretch): a mean of the samples would weigh most where a recorder happened to take most of them, and would jump as a
 * sample crosses an end. It is the mean of levels, not of energies.
 */
public final class LevelTrace {
    private final double[] timeS;
    private final double[] levelDb;

    /**
     * One time and one level per sample; times rise.
     *
     * @param timeS in s, strictly rising, at least one
     * @param levelDb in dB, finite, one for each time
     * @throws IllegalArgumentException where the numbers of times and levels differ or are 0, one is not finite, or the
     *     time does not rise
     */
    public LevelTrace(double[] timeS, double[] levelDb) {
        if (timeS.length != levelDb.length || timeS.length == 0) {
            throw new IllegalArgumentException(timeS.length + " times and " + levelDb.length + " levels");
        }
        this.timeS = timeS.clone();
        this.levelDb = levelDb.clone();
        for (int i = 0; i < timeS.length; i++) {
            checkSample(i);
        }
    }

    private void checkSample(int i) {
        if (!Double.isFinite(timeS[i]) || !Double.isFinite(levelDb[i])) {
            throw new IllegalArgumentException("sample " + i + " is not finite");
        }
        if (i > 0 && timeS[i] <= timeS[i - 1]) {
            throw new IllegalArgumentException("the time does not rise at sample " + i);
        }
    }

    /** {@return how many samples it has, at least 1} */
    public int size() {
        return timeS.length;
    }

    /** {@return the time of the first sample, in s} */
    public double startS() {
        return timeS[0];
    }

    /** {@return the time of the last sample, in s} */
    public double endS() {
        return timeS[timeS.length - 1];
    }

    double timeS(int sample) {
        return timeS[sample];
    }

    double levelDb(int sample) {
        return levelDb[sample];
    }

    /** How many samples lie in a stretch of time, both ends included. */
    int samplesBetween(double fromS, double toS) {
        return firstAfter(toS) - firstAfter(Math.nextDown(fromS));
    }

    /** The first sample later than a time; {@link #size} where there is none. */
    int firstAfter(double t) {
        int at = Arrays.binarySearch(timeS, t);
        return at >= 0 ? at + 1 : -at - 1;
    }

    /**
     * {@return the level in dB at a time, on the straight line between the samples around it}
     *
     * @param t in s, between {@link #startS} and {@link #endS}
     * @throws IllegalArgumentException where the time lies outside the trace
     */
    public double levelDbAt(double t) {
        int after = firstAfter(t);
        if (after == 0 || (after == timeS.length && t > endS())) {
            throw new IllegalArgumentException(t + " s lies outside the trace");
        }
        double before = levelDb[after - 1];
        if (after == timeS.length) {
            return before;
        }
        return before + (levelDb[after] - before) * (t - timeS[after - 1]) / (timeS[after] - timeS[after - 1]);
    }

    /** The mean level between two times inside the trace. */
    double meanDb(double fromS, double toS) {
        if (!(fromS < toS)) {
            throw new IllegalArgumentException("no time between " + fromS + " s and " + toS + " s");
        }
        double lastS = fromS;
        double lastDb = levelDbAt(fromS);
        double area = 0;
        for (int i = firstAfter(fromS); i < timeS.length && timeS[i] < toS; i++) {
            area += (timeS[i] - lastS) * (levelDb[i] + lastDb) / 2;
            lastS = timeS[i];
            lastDb = levelDb[i];
        }
        area += (toS - lastS) * (levelDbAt(toS) + lastDb) / 2;
        return area / (toS - fromS);
    }
}
