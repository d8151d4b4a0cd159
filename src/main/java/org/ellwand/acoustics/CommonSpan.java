package org.ellwand.acoustics;

import java.util.stream.IntStream;

/**
 * The samples that two traces have in common: of the trace that begins earlier the sample nearest to the beginning of the
 * other, and on from there until one of them ends.
 */
record CommonSpan(LevelTrace inPlace, int inPlaceStart, LevelTrace openEar, int openEarStart, int size) {
    static CommonSpan of(LevelTrace inPlace, LevelTrace openEar) {
        double startS = Math.max(inPlace.startS(), openEar.startS());
        int ofInPlace = nearest(inPlace, startS);
        int ofOpenEar = nearest(openEar, startS);
        int size = Math.min(inPlace.size() - ofInPlace, openEar.size() - ofOpenEar);
        return new CommonSpan(inPlace, ofInPlace, openEar, ofOpenEar, size);
    }

    private static int nearest(LevelTrace trace, double timeS) {
        int after = trace.firstAfter(timeS);
        if (after == 0 || after == trace.size()) {
            return Math.max(0, after - 1);
        }
        return timeS - trace.timeS(after - 1) <= trace.timeS(after) - timeS ? after - 1 : after;
    }

    private double timeS(int sample) {
        return inPlace.timeS(inPlaceStart + sample);
    }

    /** Whether all samples stand in pairs of one time. */
    boolean isOneClock(double toleranceS) {
        // A decimal tenth of a millisecond is no binary fraction.
        double most = toleranceS * (1 + 1e-6);
        return IntStream.range(0, size).allMatch(i -> Math.abs(timeS(i) - openEar.timeS(openEarStart + i)) <= most);
    }

    /** Behind which sample each whole frame ends; times early by up to the tolerance belong to the next frame. */
    int[] frameEnds(double frameS, double toleranceS) {
        int frames = (int) Math.floor((durationS() + toleranceS) / frameS);
        int[] ends = new int[frames];
        int sample = 0;
        for (int frame = 0; frame < frames; frame++) {
            double endS = timeS(0) + (frame + 1) * frameS - toleranceS;
            while (sample < size && timeS(sample) < endS) {
                sample++;
            }
            ends[frame] = sample;
        }
        return ends;
    }

    private double durationS() {
        return size < 2 ? 0 : (timeS(size - 1) - timeS(0)) * size / (size - 1);
    }

    /** Level in place less level of the open ear, each by energy, from one sample to before another. */
    double gainDb(int from, int to) {
        return sumDb(inPlace, inPlaceStart + from, inPlaceStart + to)
                - sumDb(openEar, openEarStart + from, openEarStart + to);
    }

    private static double sumDb(LevelTrace trace, int from, int to) {
        return Energy.sumDb(
                IntStream.range(from, to).mapToDouble(trace::levelDb).toArray());
    }
}
