package org.ellwand.plan;

import java.util.OptionalDouble;
import org.ellwand.audit.ClaimAudit;

/**
 * What stands between a claim and a firm verdict.
 *
 * @param insertions how many a further sitting needs in each ear; 0 where none are planned
 * @param chance how often such a sitting decides, if the value stays; absent where that cannot be said
 * @param wouldPass the limit that today's value would pass; empty where that cannot be said
 * @param figure further figure of the advice, in the unit of the limit: the uncertainty needed, the margin that is told
 * @param wearers of a statement about people or products: how many heads or samples in all; 0 where that is not the question
 */
record Outlook(
        ClaimAudit audited,
        Advice advice,
        int insertions,
        OptionalDouble chance,
        String wouldPass,
        OptionalDouble figure,
        int wearers) {
    /** One that counts no ears and no samples. */
    Outlook(
            ClaimAudit audited,
            Advice advice,
            int insertions,
            OptionalDouble chance,
            String wouldPass,
            OptionalDouble figure) {
        this(audited, advice, insertions, chance, wouldPass, figure, 0);
    }

    /** What to do; the sentences stand in the template. */
    enum Advice {
        /** More insertions, in a further sitting. */
        INSERTIONS,
        /** More heads, for a statement about people. */
        HEADS,
        /** More samples, for a statement about products. */
        SAMPLES,
        /** First readings; of a limit with two ends it is known how many. */
        FIRST,
        /** First readings of a limit with one end: how far beyond it a value is told. */
        FIRST_MARGIN,
        /** First readings for a statement about people: one ear tells nothing of others. */
        FIRST_HEADS,
        /** First readings for a statement about products: one sample tells nothing of others. */
        FIRST_SAMPLES,
        /** Bands or takes are missing, or something is not declared. */
        COMPLETE,
        /** No number of insertions within reason; a smaller uncertainty. */
        SMALLER,
        /** The sound is too loud for people. */
        FIXTURE,
        /** Traces of a steady sound or a programme, each at an insertion of its own. */
        TRACES,
        /** Something other than curves: a figure, a trace, a rating. */
        OTHER,
        /** The uncertainty is to be stated. */
        STATE,
        /** No reading of this kind can tell. */
        OUT_OF_REACH
    }

    /** Whether others are to wear it, or other samples to be worn. */
    boolean isOfOthers() {
        return advice == Advice.HEADS || advice == Advice.SAMPLES;
    }

    /** Whether curves are to be read. */
    boolean isPlanned() {
        return insertions > 0 && advice != Advice.TRACES;
    }

    /** Whether figures, traces or harmonics are to be read. */
    boolean isOfBench() {
        return advice == Advice.OTHER || advice == Advice.TRACES || advice == Advice.FIXTURE;
    }
}
