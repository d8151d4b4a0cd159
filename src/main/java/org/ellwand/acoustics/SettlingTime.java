package org.ellwand.acoustics;

/**
 * Attack and release time: from a step of the sound until the level at the output stays within ± a stated distance of its
 * new steady level. The stated distance is the claim's: ANSI S3.22 steps from 55 to 90 dB SPL and takes 3 dB for the
 * attack (as hearingreview.com restates it, "Back to Basics: electronic hearing protection") and 4 dB for the release (from
 * memory); IEC 60118-2 steps from 55 to 80 dB SPL and takes 2 dB (from memory).
 *
 * <p>The new steady level is the mean over the last fifth of the time from the step to the end of the trace. The level is
 * followed as straight lines between samples. "Stays" is meant: a level that comes within, leaves and returns has settled
 * when it returns for the last time. Where that is only within the last fifth, the steady level was not steady, and there
 * is no number. A level that is within from the step on gives 0 s. The straight line across the step itself is as good as
 * the spacing of the samples there.
 *
 * <p>A level that approaches as Δ e^(−t/τ) takes τ ln(Δ / within), where the trace is long against τ.
 */
public final class SettlingTime {
    /** Levels that part by less than this from the stated distance lie on it: the rest is rounding. */
    private static final double ROUNDING_DB = 1e-9;

    private SettlingTime() {}

    /**
     * In s from the step.
     *
     * @param trace level at the output over time
     * @param stepAtS time of the step, inside the trace and before its end
     * @param withinDb above 0
     * @return in s; none where the level settles only within the last fifth, or too few samples lie there
     * @throws IllegalArgumentException where {@code withinDb} is not above 0, or the step lies outside the trace
     */
    public static TraceNumber seconds(LevelTrace trace, double stepAtS, double withinDb) {
        if (!(withinDb > 0)) {
            throw new IllegalArgumentException("a distance is above 0 dB, not " + withinDb);
        }
        if (!(stepAtS >= trace.startS() && stepAtS < trace.endS())) {
            throw new IllegalArgumentException("the step at " + stepAtS + " s lies outside the trace");
        }
        double lastFifthS = trace.endS() - (trace.endS() - stepAtS) / 5;
        if (trace.samplesBetween(lastFifthS, trace.endS()) < 2) {
            return TraceNumber.none(NoNumber.TOO_FEW_SAMPLES);
        }
        double steadyDb = trace.meanDb(lastFifthS, trace.endS());
        double settledS = lastEntryS(trace, stepAtS, steadyDb, withinDb);
        return settledS < lastFifthS ? TraceNumber.of(settledS - stepAtS) : TraceNumber.none(NoNumber.NOT_SETTLED);
    }

    /** When the level comes within for the last time; the step where it is within throughout, +∞ where it ends outside. */
    private static double lastEntryS(LevelTrace trace, double stepAtS, double steadyDb, double withinDb) {
        double laterS = Double.POSITIVE_INFINITY;
        double laterOffDb = Double.NaN;
        for (int i = trace.size() - 1; i >= 0 && trace.timeS(i) > stepAtS; i--) {
            double offDb = trace.levelDb(i) - steadyDb;
            if (isOutside(offDb, withinDb)) {
                return crossingS(trace.timeS(i), offDb, laterS, laterOffDb, withinDb);
            }
            laterS = trace.timeS(i);
            laterOffDb = offDb;
        }
        double offAtStepDb = trace.levelDbAt(stepAtS) - steadyDb;
        return isOutside(offAtStepDb, withinDb)
                ? crossingS(stepAtS, offAtStepDb, laterS, laterOffDb, withinDb)
                : stepAtS;
    }

    private static boolean isOutside(double offDb, double withinDb) {
        return Math.abs(offDb) > withinDb + ROUNDING_DB;
    }

    /** Where the straight line from a point outside to a later one within comes within. */
    private static double crossingS(
            double outsideS, double outsideDb, double withinS, double withinOffDb, double withinDb) {
        if (withinS == Double.POSITIVE_INFINITY) {
            return withinS;
        }
        double edgeDb = Math.copySign(withinDb, outsideDb);
        double share = Math.min(1, (outsideDb - edgeDb) / (outsideDb - withinOffDb));
        return outsideS + share * (withinS - outsideS);
    }
}
