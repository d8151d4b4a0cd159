package org.ellwand.acoustics;

/** Sums of sound energy. */
public final class Energy {
    private static final double PER_DB = Math.log(10) / 10;

    private Energy() {}

    /**
     * {@return the level of several bands together in dB: 10 lg Σ 10^(L/10)} An empty sum is −∞. Follows from
     * what a level is; sounds of different bands, or not in step with each other, add up so.
     *
     * @param levelsDb levels in dB, all with the same reference
     */
    public static double sumDb(double... levelsDb) {
        double sum = 0;
        for (double level : levelsDb) {
            sum += Math.exp(level * PER_DB);
        }
        return Math.log(sum) / PER_DB;
    }
}
