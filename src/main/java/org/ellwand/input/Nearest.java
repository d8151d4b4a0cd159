package org.ellwand.input;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Suggests the accepted word that a misspelt one probably means. */
public final class Nearest {
    private Nearest() {}

    /**
     * {@return the nearest of the accepted words, where one is near: fewer than two fifths of the letters would have to
     * change, or one}
     *
     * @param word as written
     * @param accepted the words that are accepted
     */
    public static Optional<String> to(String word, Collection<String> accepted) {
        return accepted.stream()
                .map(known -> new Candidate(known, distance(word, known)))
                .filter(near ->
                        near.distance <= 1 || 5 * near.distance < 2 * Math.max(word.length(), near.word.length()))
                .min(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::word))
                .map(Candidate::word);
    }

    private record Candidate(String word, int distance) {}

    /**
     * {@return {@code  (did you mean 'statistic'?)} with the space before it, or nothing}
     *
     * @param word as written
     * @param accepted the words that are accepted
     */
    public static String hint(String word, Collection<String> accepted) {
        return to(word, accepted).map(a -> " (did you mean '" + a + "'?)").orElse("");
    }

    /**
     * Insertions, deletions and changes of letters and exchanges of neighbouring ones, case aside, no letter touched twice
     * (optimal string alignment).
     */
    static int distance(String from, String to) {
        String a = from.toLowerCase(Locale.ROOT);
        String b = to.toLowerCase(Locale.ROOT);
        int[] before = new int[b.length() + 1];
        int[] above = new int[b.length() + 1];
        int[] row = IntStream.rangeClosed(0, b.length()).toArray();
        for (int i = 1; i <= a.length(); i++) {
            int[] spare = before;
            before = above;
            above = row;
            row = spare;
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int change = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, Math.min(above[j], row[j - 1]) + 1);
                if (isExchange(a, i, b, j)) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
            }
        }
        return row[b.length()];
    }

    private static boolean isExchange(String a, int i, String b, int j) {
        return i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    }
}
