package org.ellwand.report;

import org.ellwand.audit.Judgement;

/** What pages show of the cells of a lot: those that are least probable; the rest stands in a table of its own. */
final class Worst {
    /** Of more cells than this a page shows the worst alone. */
    static final int MOST_CELLS = 40;

    private static final int SHOWN = 12;

    private Worst() {}

    /** The judgement itself, or with its worst cells alone, worst first. */
    static Judgement of(Judgement judgement) {
        return judgement.cells().size() > MOST_CELLS ? judgement.withCells(judgement.leastProbable(SHOWN)) : judgement;
    }
}
