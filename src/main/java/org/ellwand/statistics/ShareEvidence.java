package org.ellwand.statistics;

/** What some values say about the share of their population that meets a limit. */
public interface ShareEvidence {
    /** The confidence with which it can be said that at least this share of the population is inside. */
    double confidence(double share);

    /**
     * The probability, if exactly this share of the population is inside, of values that look at least as bad as these: a
     * small one speaks against the share and against every larger one.
     */
    double chanceThisBad(double share);

    /** The largest share of which it can be said with this confidence that at least so much is inside. */
    double shareAtLeast(double confidence);
}
