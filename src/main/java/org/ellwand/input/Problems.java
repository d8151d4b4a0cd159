package org.ellwand.input;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** Collects what is wrong with the input, so that it can be told all at once. */
public final class Problems {
    /** More than this many are counted, not printed. */
    public static final int MOST = 20;

    private final SortedSet<Problem> found = new TreeSet<>();

    public void add(Place place, String text) {
        found.add(new Problem(place, text));
    }

    public void addAll(List<Problem> problems) {
        found.addAll(problems);
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** Throws what was found, in file order, at most {@link #MOST} and the number of the rest. */
    public void throwIfAny() throws InputException {
        if (found.isEmpty()) {
            return;
        }
        List<Problem> first = found.stream().limit(MOST).toList();
        if (found.size() == first.size()) {
            throw new InputException(first);
        }
        Problem last = first.get(MOST - 1);
        String more = last.text() + " (and " + (found.size() - MOST) + " more problems)";
        List<Problem> all = new ArrayList<>(first.subList(0, MOST - 1));
        all.add(new Problem(last.place(), more));
        throw new InputException(all);
    }
}
