package org.ellwand.measurement;

import java.util.Optional;

/** What the rows of a sheet run over: bands or harmonic orders, counted by an integer. */
interface Axis {
    /** The name of its column. */
    String column();

    /** The position that a number of the column stands for. */
    Optional<Integer> position(double number);

    /** What is expected in place of a number that stands for none. */
    String expected(double number);

    /** A position as messages name it. */
    String name(int position);
}
