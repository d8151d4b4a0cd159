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
        double sumDb = aboveDb(0, levelsDb);
        // Of levels far from 0 dB no sum of powers can be written down, only one beside the highest of them.
        return Double.isFinite(sumDb) ? sumDb : aboveDb(highestDb(levelsDb), levelsDb);
    }

    private static double highestDb(double... levelsDb) {
        double highest = Double.NEGATIVE_INFINITY;
        for (double level : levelsDb) {
            highest = Math.max(highest, level);
        }
        return Double.isFinite(highest) ? highest : 0;
    }

    private static double aboveDb(double referenceDb, double... levelsDb) {
        double sum = 0;
        for (double level : levelsDb) {
            sum += Math.exp((level - referenceDb) * PER_DB);
        }
        return referenceDb + Math.log(sum) / PER_DB;
    }
}
