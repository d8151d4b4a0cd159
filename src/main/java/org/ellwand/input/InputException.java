package org.ellwand.input;

import java.util.List;
import java.util.stream.Collectors;

/** The input cannot be used. Carries every problem found, in file order. */
public final class InputException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public InputException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public InputException(Place place, String text) {
        this(List.of(new Problem(place, text)));
    }

    public List<Problem> problems() {
        return problems;
    }
}
