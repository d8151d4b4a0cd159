package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which words of one sentence are gone in the next, and which are new: a longest common subsequence of their words
 * (Wagner and Fischer 1974).
 */
final class WordChanges {
    /** Beyond so many words the two are shown side by side and not compared: the table grows with their product. */
    private static final int MOST_WORDS = 400;

    private final List<String> before;
    private final List<String> after;
    private final int[][] common;

    private WordChanges(List<String> before, List<String> after) {
        this.before = before;
        this.after = after;
        this.common = new int[before.size() + 1][after.size() + 1];
    }

    /** Runs of words with {@code kind} {@code same}, {@code gone} or {@code new}; none where the texts are too long. */
    static List<Object> between(String before, String after) {
        List<String> one = words(before);
        List<String> two = words(after);
        if (one.size() > MOST_WORDS || two.size() > MOST_WORDS) {
            return List.of();
        }
        WordChanges changes = new WordChanges(one, two);
        changes.fill();
        return changes.runs();
    }

    private static List<String> words(String text) {
        return Stream.of(text.strip().split("\\s+")).toList();
    }

    private void fill() {
        for (int i = before.size() - 1; i >= 0; i--) {
            for (int j = after.size() - 1; j >= 0; j--) {
                common[i][j] = before.get(i).equals(after.get(j))
                        ? common[i + 1][j + 1] + 1
                        : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
    }

    private List<Object> runs() {
        List<Object> runs = new ArrayList<>();
        List<String> run = new ArrayList<>();
        String kind = "";
        int i = 0;
        int j = 0;
        while (i < before.size() || j < after.size()) {
            String next = kind(i, j);
            if (!next.equals(kind)) {
                close(runs, kind, run);
                kind = next;
            }
            run.add(next.equals("new") ? after.get(j) : before.get(i));
            i += next.equals("new") ? 0 : 1;
            j += next.equals("gone") ? 0 : 1;
        }
        close(runs, kind, run);
        return runs;
    }

    private String kind(int i, int j) {
        if (i < before.size() && j < after.size() && before.get(i).equals(after.get(j))) {
            return "same";
        }
        boolean gone = j == after.size() || (i < before.size() && common[i + 1][j] >= common[i][j + 1]);
        return gone ? "gone" : "new";
    }

    private static void close(List<Object> runs, String kind, List<String> run) {
        if (!run.isEmpty()) {
            runs.add(Fields.of("kind", kind).and("text", String.join(" ", run)).map());
            run.clear();
        }
    }
}
