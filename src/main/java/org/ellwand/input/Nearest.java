package org.ellwand.input;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Suggests the accepted word that a misspelt one probably means. */
public final class Nearest {
    private Nearest() {}

    /**
     * {@return the nearest of the accepted words, where one is near: fewer than half of the letters would have to
     * change}
     *
     * @param word as written
     * @param accepted the words that are accepted
     */
    public static Optional<String> to(String word, Collection<String> accepted) {
        return accepted.stream()
                .filter(a -> distance(word, a) <= Math.max(1, Math.max(word.length(), a.length()) * 2 / 5))
                .min(Comparator.<String>comparingInt(a -> distance(word, a)).thenComparing(a -> a));
    }

    /**
     * {@return {@code  (did you mean 'statistic'?)} with the space before it, or nothing}
     *
     * @param word as written
     * @param accepted the words that are accepted
     */
    public static String hint(String word, Collection<String> accepted) {
        return to(word, accepted).map(a -> " (did you mean '" + a + "'?)").orElse("");
    }

    /** Insertions, deletions and changes of letters, case aside (Levenshtein). */
    static int distance(String from, String to) {
        String a = from.toLowerCase(Locale.ROOT);
        String b = to.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
