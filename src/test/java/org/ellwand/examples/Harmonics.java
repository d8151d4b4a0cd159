package org.ellwand.examples;

import java.util.Locale;

/**
 * A tone and its harmonics behind a soft limiter. As for a power series, order n rises by n dB for each dB of the tone; at
 * one level the second is a given share of the tone, and each further order half of the one before. Sizes: common practice,
 * no source.
 *
 * @param atDb input level of that share
 * @param share second harmonic over the tone
 */
record Harmonics(double atDb, double share) {
    private static final int ORDERS = 5;

    /** Rows of one tone: stimulus, order, level. */
    String rows(String stimulus, double inputDb, double outputDb) {
        StringBuilder rows = new StringBuilder(String.format(Locale.ROOT, "%s,1,%.2f\n", stimulus, outputDb));
        for (int order = 2; order <= ORDERS; order++) {
            rows.append(
                    String.format(Locale.ROOT, "%s,%d,%.2f\n", stimulus, order, outputDb + relativeDb(order, inputDb)));
        }
        return rows.toString();
    }

    private double relativeDb(int order, double inputDb) {
        double halvings = 20 * Math.log10(2) * (order - 2);
        return 20 * Math.log10(share) + (order - 1) * (inputDb - atDb) - halvings;
    }
}
