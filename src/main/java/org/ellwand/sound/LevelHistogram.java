package org.ellwand.sound;

/** How often which level was there, in classes of 0.01 dB: percentiles of hours in constant memory. */
final class LevelHistogram {
    private static final double CLASS_DB = 0.01;
    /** In dB re full scale; what lies lower counts as this. */
    private static final double LOWEST_DB = -300;

    private final long[] counts = new long[40_000];
    private long total;

    /** Counts a mean square. */
    void add(double meanSquare) {
        double levelDb = meanSquare > 0 ? 10 * Math.log10(meanSquare) : LOWEST_DB;
        int at = (int) Math.floor((levelDb - LOWEST_DB) / CLASS_DB);
        counts[Math.max(0, Math.min(counts.length - 1, at))]++;
        total++;
    }

    long total() {
        return total;
    }

    /** The level in dB re full scale that was exceeded for a share of the time; NaN where nothing was counted. */
    double exceededDb(double share) {
        double wanted = share * total;
        long above = 0;
        for (int i = counts.length - 1; i >= 0 && total > 0; i--) {
            above += counts[i];
            if (above >= wanted && above > 0) {
                return LOWEST_DB + (i + 0.5) * CLASS_DB;
            }
        }
        return Double.NaN;
    }
}
