package org.ellwand.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Looks for the fewest insertions that decide a claim, by halves among even numbers. More of them make no verdict less firm. The most that
 * are taken and a few come first, because the uncertainty is told by these two; after them every number has its own turn, so that claims
 * that ask side by side never ask for the same number in different turns.
 */
final class FewestInsertions {
    /** Enough to show a scatter, and few enough for it to divide a good deal further. */
    static final int FEW = 4;

    private final Map<Integer, Boolean> decides = new HashMap<>();

    /** How far the search came: the first is not enough, the second is. */
    private record Between(int undecided, int decided) {
        boolean isClosed() {
            return decided - undecided <= 2;
        }

        int middle() {
            return decided > Outlooks.MOST ? Outlooks.MOST : (undecided + decided) / 4 * 2;
        }

        Between with(boolean decides) {
            return decides ? new Between(undecided, middle()) : new Between(middle(), decided);
        }
    }

    /** The number of insertions to be judged next; empty where the search is over. */
    OptionalInt next() {
        if (!decides.containsKey(Outlooks.MOST)) {
            return OptionalInt.of(Outlooks.MOST);
        }
        if (!decides.containsKey(FEW)) {
            return OptionalInt.of(FEW);
        }
        Between between = between();
        return between.isClosed() ? OptionalInt.empty() : OptionalInt.of(between.middle());
    }

    void hear(int insertions, boolean decided) {
        decides.put(insertions, decided);
    }

    /** The fewest that decide, beyond {@link Outlooks#MOST} where none do; as far as the search came. */
    int found() {
        return between().decided();
    }

    private Between between() {
        Between between = new Between(0, Outlooks.MOST + 2);
        while (!between.isClosed() && decides.containsKey(between.middle())) {
            between = between.with(decides.getOrDefault(between.middle(), false));
        }
        return between;
    }
}
