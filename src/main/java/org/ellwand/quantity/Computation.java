package org.ellwand.quantity;

import java.util.List;

/**
 * One way from the levels of readings to judged numbers. Numbers of the readings come in as arrays, so that the same
 * formula serves the unperturbed readings and every draw; instances hold scratch space and belong to one thread.
 */
public interface Computation {
    /** {@return how many numbers come out} */
    int size();

    /**
     * Computes the numbers.
     *
     * @param levelsDb for each reading of the {@link ReadingIndex}, its numbers, in dB for curves and harmonics
     * @param out receives {@link #size()} numbers, unit of the quantity; infinite where a number lies beyond the
     *     {@link #reach()}
     */
    void compute(double[][] levelsDb, double[] out);

    /** {@return whether every number is a linear function of the levels} */
    boolean isLinear();

    /**
     * {@return the numbers between the readings and the judged ones, whose errors are found first: the gains of a
     * series, say} This computation itself where there are none.
     */
    default Computation inner() {
        return this;
    }

    /**
     * From the inner numbers to the judged ones.
     *
     * @param inner what {@link #inner} computed
     * @param out receives {@link #size()} numbers, unit of the quantity
     */
    default void outer(double[] inner, double[] out) {
        System.arraycopy(inner, 0, out, 0, out.length);
    }

    /**
     * {@return levels of the test sound in dB that the inner numbers belong to, lowest first; empty where they are no
     * such series}
     */
    default List<Double> seriesLevelsDb() {
        return List.of();
    }

    /** {@return how far the judged numbers can be told} */
    default Reach reach() {
        return Reach.UNLIMITED;
    }

    /** Takes in how far a number moves with a level. */
    interface Slopes {
        /**
         * Adds to ∂out[point]/∂level[reading][band]; places at which nothing is added are 0.
         *
         * @param reading position in the {@link ReadingIndex}
         * @param band position in the reading's spectrum
         * @param point which of the numbers
         * @param slope unit of the quantity per dB
         */
        void add(int reading, int band, int point, double slope);
    }

    /**
     * Hands over {@code factor} times the slopes of a linear computation, where they are known in closed form.
     *
     * @param factor a plain number
     * @param slopes takes them
     * @return whether they are; if not, nothing was handed over
     */
    default boolean addSlopes(double factor, Slopes slopes) {
        return false;
    }

    /** Takes in what the slopes of a linear computation follow from. */
    interface Shape {
        /**
         * A reading that moves the numbers.
         *
         * @param position in the {@link ReadingIndex}
         */
        void reading(int position);

        /**
         * A number that enters the slopes.
         *
         * @param factor any number
         */
        void number(double factor);

        /**
         * What all computations of the same slopes share.
         *
         * @param shared told by identity
         */
        void same(Object shared);
    }

    /**
     * Hands over what the slopes follow from, where {@link #addSlopes} knows them: two computations that hand over the same,
     * in the same order, have the same slopes, each with its own readings.
     *
     * @param shape takes it
     * @return whether they are known; if not, what was handed over is of no use
     */
    default boolean addShape(Shape shape) {
        return false;
    }

    /**
     * A computation whose numbers, times a factor, are added to others.
     *
     * @param of what computes the numbers
     * @param factor a plain number
     */
    record Addend(Computation of, double factor) {}

    /** {@return what the numbers are the sum of; this computation alone where they are no such sum} */
    default List<Addend> addends() {
        return List.of(new Addend(this, 1));
    }

    /** {@return positions of the readings that move the numbers, ascending; empty where any may} */
    default List<Integer> readings() {
        return List.of();
    }

    /**
     * The readings of several computations together.
     *
     * @param computations any of which may name none
     * @return positions, ascending; empty where any reading may move a number
     */
    static List<Integer> readings(List<Computation> computations) {
        List<List<Integer>> each =
                computations.stream().map(Computation::readings).toList();
        return each.stream().anyMatch(List::isEmpty)
                ? List.of()
                : each.stream().flatMap(List::stream).distinct().sorted().toList();
    }

    /** {@return whether there are numbers between the readings and the judged ones} */
    default boolean isStaged() {
        return inner() != this;
    }
}
