package org.ellwand.acoustics;

/**
 * Drift of a steady level: its mean over the last fifth of the time less its mean over the first fifth, in dB. Positive
 * where the level rises. The means are those of {@link LevelTrace}; that they are taken over fifths is this
 * program's choice, no source.
 */
public final class LevelDrift {
    private LevelDrift() {}

    /**
     * {@return the drift in dB; none where a fifth holds fewer than two samples}
     *
     * @param trace of a steady sound
     */
    public static TraceNumber db(LevelTrace trace) {
        double fifthS = (trace.endS() - trace.startS()) / 5;
        double firstEndS = trace.startS() + fifthS;
        double lastStartS = trace.endS() - fifthS;
        if (trace.samplesBetween(trace.startS(), firstEndS) < 2 || trace.samplesBetween(lastStartS, trace.endS()) < 2) {
            return TraceNumber.none(NoNumber.TOO_FEW_SAMPLES);
        }
        return TraceNumber.of(trace.meanDb(lastStartS, trace.endS()) - trace.meanDb(trace.startS(), firstEndS));
    }
}
