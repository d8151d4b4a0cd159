package org.ellwand.compare;

import org.ellwand.audit.Verdict;

/** What became of a verdict. */
public enum Change {
    /** As before. */
    SAME,
    /** Nearer to a pass. */
    BETTER,
    /** Nearer to a fail. */
    WORSE;

    /** From one verdict to another: fail is worse than marginal or untested, and those are worse than pass. */
    static Change of(Verdict first, Verdict second) {
        int difference = rank(second) - rank(first);
        return difference == 0 ? SAME : difference > 0 ? WORSE : BETTER;
    }

    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case PASS -> 0;
            case MARGINAL, UNTESTED -> 1;
            case FAIL -> 2;
        };
    }
}
