package org.ellwand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Differences, ratios and means of numbers that may lie beyond what a series tells. */
class ComposedByHandTest {
    private static final double BEYOND = Double.POSITIVE_INFINITY;

    /** Numbers that are given. */
    private record Given(double... numbers) implements Computation {
        @Override
        public int size() {
            return numbers.length;
        }

        @Override
        public void compute(double[][] levelsDb, double[] out) {
            System.arraycopy(numbers, 0, out, 0, out.length);
        }

        @Override
        public boolean isLinear() {
            return true;
        }
    }

    /** Twice the sum of two inner numbers, as a second step. */
    private static Computation staged(double one, double two) {
        return new StagedComputation(
                new Given(one, two),
                (inner, out) -> out[0] = 2 * (inner[0] + inner[1]),
                1,
                new Reach(0, 90),
                List.of(60.0, 90.0));
    }

    private static double[] numbers(ComposedComputation.Way way, Computation... members) {
        ComposedComputation composed = new ComposedComputation(List.of(members), way);
        double[] out = new double[composed.size()];
        composed.compute(new double[0][], out);
        return out;
    }

    @Test
    void differenceRatioAndMean() {
        Computation first = new Given(6, 9);
        Computation second = new Given(2, 4);
        assertThat(numbers(ComposedComputation.Way.DIFFERENCE, first, second)).containsExactly(4, 5);
        assertThat(numbers(ComposedComputation.Way.RATIO, first, second)).containsExactly(3, 2.25);
        assertThat(numbers(ComposedComputation.Way.MEAN, first, second)).containsExactly(4, 6.5);
    }

    @Test
    void whatLiesBeyondLeavesNothingToSay() {
        Computation told = new Given(6);
        Computation beyond = new Given(BEYOND);
        for (ComposedComputation.Way way : ComposedComputation.Way.values()) {
            assertThat(numbers(way, beyond, told)).as("first %s", way).containsExactly(Double.NaN);
            assertThat(numbers(way, told, beyond)).as("second %s", way).containsExactly(Double.NaN);
            assertThat(numbers(way, beyond, beyond)).as("both %s", way).containsExactly(Double.NaN);
        }
    }

    @Test
    void linearWhereEveryMemberIsAndItIsNoRatio() {
        Computation linear = new Given(1);
        Computation staged = staged(1, 2);
        assertThat(new ComposedComputation(List.of(linear, linear), ComposedComputation.Way.DIFFERENCE).isLinear())
                .isTrue();
        assertThat(new ComposedComputation(List.of(linear, linear), ComposedComputation.Way.RATIO).isLinear())
                .isFalse();
        assertThat(new ComposedComputation(List.of(linear, staged), ComposedComputation.Way.MEAN).isLinear())
                .isFalse();
        assertThat(new JoinedComputation(List.of(linear, linear)).isLinear()).isTrue();
        assertThat(new JoinedComputation(List.of(linear, staged)).isLinear()).isFalse();
    }

    /** 2 · (1 + 2) = 6 and 2 · (3 + 5) = 16, found in the inner numbers 1, 2, 3, 5. */
    @Test
    void theInnerNumbersOfBothSidesStandOneAfterTheOther() {
        ComposedComputation composed =
                new ComposedComputation(List.of(staged(1, 2), staged(3, 5)), ComposedComputation.Way.DIFFERENCE);
        assertThat(composed.isStaged()).isTrue();
        double[] inner = new double[composed.inner().size()];
        composed.inner().compute(new double[0][], inner);
        assertThat(inner).containsExactly(1, 2, 3, 5);
        double[] out = new double[1];
        composed.outer(inner, out);
        assertThat(out).containsExactly(-10);
        composed.outer(new double[] {1, 2, 3, 4}, out);
        assertThat(out).containsExactly(-8);
        composed.compute(new double[0][], out);
        assertThat(out).containsExactly(-10);
        assertThat(composed.addSlopes(1, (r, b, p, slope) -> {})).isFalse();
    }

    @Test
    void aStageIsNotLinearAndTellsItsSeries() {
        Computation staged = staged(1, 2);
        double[] out = new double[1];
        staged.compute(new double[0][], out);
        assertThat(out).containsExactly(6);
        assertThat(staged.isLinear()).isFalse();
        assertThat(staged.isStaged()).isTrue();
        assertThat(staged.seriesLevelsDb()).containsExactly(60.0, 90.0);
        assertThat(staged.reach().nearest(100)).isCloseTo(90, within(0.0));
        assertThat(staged.readings()).isEmpty();
    }

    /** Where nothing is found in other numbers, the inner numbers are the judged ones. */
    @Test
    void withoutAStageTheNumbersAreTheInnerOnes() {
        ComposedComputation plain =
                new ComposedComputation(List.of(new Given(6), new Given(2)), ComposedComputation.Way.DIFFERENCE);
        assertThat(plain.isStaged()).isFalse();
        assertThat(plain.inner()).isSameAs(plain);
        double[] out = new double[1];
        plain.outer(new double[] {7}, out);
        assertThat(out).containsExactly(7);
    }

    /** A difference of a mean of two and another is the sum of halves of these less that one. */
    @Test
    void addendsCarryTheirFactors() {
        Computation one = new Given(1);
        Computation two = new Given(2);
        Computation three = new Given(3);
        Computation mean = new ComposedComputation(List.of(one, two), ComposedComputation.Way.MEAN);
        Computation difference = new ComposedComputation(List.of(three, mean), ComposedComputation.Way.DIFFERENCE);
        assertThat(difference.addends())
                .containsExactly(
                        new Computation.Addend(three, 1),
                        new Computation.Addend(one, -0.5),
                        new Computation.Addend(two, -0.5));
        Computation ratio = new ComposedComputation(List.of(one, two), ComposedComputation.Way.RATIO);
        assertThat(ratio.addends()).containsExactly(new Computation.Addend(ratio, 1));
    }
}
