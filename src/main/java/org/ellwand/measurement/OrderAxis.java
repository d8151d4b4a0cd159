package org.ellwand.measurement;

import java.util.Optional;

/** Harmonic orders; 1 is the fundamental. */
record OrderAxis() implements Axis {
    private static final int HIGHEST = 1000;

    @Override
    public String column() {
        return "order";
    }

    @Override
    public Optional<Integer> position(double number) {
        return number >= 1 && number <= HIGHEST && number == Math.rint(number)
                ? Optional.of((int) number)
                : Optional.empty();
    }

    @Override
    public String expected(double number) {
        return "expected a whole number from 1 (the fundamental) to " + HIGHEST;
    }

    @Override
    public String name(int position) {
        return "order " + position;
    }
}
