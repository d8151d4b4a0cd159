package org.ellwand.input;

import java.util.List;
import java.util.stream.Collectors;

/** The input cannot be used. Carries every problem found, in file order. */
public final class InputException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /**
     * Problems found in files.
     *
     * @param problems in file order, at least one
     */
    public InputException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /**
     * One problem.
     *
     * @param place where it is
     * @param text what was found, and what is accepted there
     */
    public InputException(Place place, String text) {
        this(List.of(new Problem(place, text)));
    }

    /** {@return every problem, in file order} */
    public List<Problem> problems() {
        return problems;
    }
}
