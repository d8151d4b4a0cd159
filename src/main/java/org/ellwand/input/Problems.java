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

    /**
     * Notes a problem; the same one twice counts once.
     *
     * @param place where it is
     * @param text what was found, and what is accepted there
     */
    public void add(Place place, String text) {
        found.add(new Problem(place, text));
    }

    /**
     * Notes the problems that another reader found.
     *
     * @param problems in any order
     */
    public void addAll(List<Problem> problems) {
        found.addAll(problems);
    }

    /** {@return whether nothing was noted} */
    public boolean isEmpty() {
        return found.isEmpty();
    }

    /**
     * Throws what was found, in file order, at most {@link #MOST} and the number of the rest.
     *
     * @throws InputException where anything was noted
     */
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
