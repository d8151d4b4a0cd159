package org.ellwand.statistics;

/** What some values say about the share of their population that meets a limit. */
public interface ShareEvidence {
    /**
     * {@return the confidence with which it can be said that at least this share of the population is inside}
     *
     * @param share between 0 and 1
     */
    double confidence(double share);

    /**
     * The probability, if exactly this share of the population is inside, of values that look at least as bad as these:
     * a small one speaks against the share and against every larger one.
     *
     * @param share between 0 and 1
     * @return a probability
     */
    double chanceThisBad(double share);

    /**
     * {@return the largest share of which it can be said with this confidence that at least so much is inside}
     *
     * @param confidence between 0 and 1
     */
    double shareAtLeast(double confidence);
}
