package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.input.Place;
import org.ellwand.input.Problem;

/** The problems of one session as they are found. Reading goes on after a problem until there are enough. */
final class Found {
    /** As many as anybody mends in one go. */
    static final int ENOUGH = 20;

    private final List<Problem> problems = new ArrayList<>();

    void add(Place place, String text) {
        if (!isEnough()) {
            problems.add(new Problem(place, text));
        }
    }

    boolean isEnough() {
        return problems.size() >= ENOUGH;
    }

    int size() {
        return problems.size();
    }

    /** Of enough of them the last one says that reading ended there. */
    List<Problem> all() {
        List<Problem> all = new ArrayList<>(problems);
        if (isEnough()) {
            Problem last = all.remove(ENOUGH - 1);
            all.add(new Problem(
                    last.place(), last.text() + " (the session is read no further: there may be more problems)"));
        }
        return List.copyOf(all);
    }
}
