package org.ellwand.measurement;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known word that a mistyped one was probably meant to be. */
final class Suggestion {
    private Suggestion() {}

    /** {@code ; did you mean "level"?}, or nothing where no word is near. */
    static String of(String text, Collection<String> known) {
        return nearest(text, known).map(word -> "; did you mean \"" + word + "\"?").orElse("");
    }

    /** The nearest word, at most a third of its letters away; the first of equals in the order of the alphabet. */
    static Optional<String> nearest(String text, Collection<String> known) {
        String wanted = text.toLowerCase(Locale.ROOT);
        return known.stream()
                .sorted()
                .filter(word -> distance(wanted, word.toLowerCase(Locale.ROOT)) <= Math.max(1, word.length() / 3))
                .min(Comparator.comparingInt(word -> distance(wanted, word.toLowerCase(Locale.ROOT))));
    }

    /** Letters to insert, delete, replace or swap with their neighbour (optimal string alignment). */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(int[][] d, String a, String b, int i, int j) {
        int replaced = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(replaced, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped =
                i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, 1 + d[i - 2][j - 2]) : best;
    }
}
