package org.ellwand.compare;

import org.ellwand.audit.Verdict;

/** What became of a verdict. */
public enum Change {
    /** As before. */
    SAME,
    /** Nearer to a pass. */
    BETTER,
    /** Nearer to a fail, or not tested any more. */
    WORSE;

    /**
     * From one verdict to another: fail is worse than marginal, and that than pass. What was tested and is not any more is worse,
     * whatever it was: nothing shows that it still is as it was.
     */
    static Change of(Verdict first, Verdict second) {
        if (first == second) {
            return SAME;
        }
        return second == Verdict.FAIL || rank(second) > rank(first) ? WORSE : BETTER;
    }

    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case PASS -> 0;
            case MARGINAL -> 1;
            case FAIL -> 2;
            case UNTESTED -> 3;
        };
    }
}
