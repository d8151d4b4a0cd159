package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Formula;
import org.junit.jupiter.api.Test;

/** Small parts of the error model: effects by point and factor, draws and what they move, repeats held against a side. */
class EffectsTest {
    /** Factor f adds f + 1 to point 0, nothing to point 1 where f is even, else −(f + 1). */
    private static Effects effects(int factors) {
        return Effects.of(2, factors, f -> new double[] {f + 1, f % 2 == 0 ? 0 : -(f + 1)});
    }

    /** More than the eight that there is room for at first. */
    @Test
    void effectsStandAtTheirFactors() {
        Effects effects = effects(21);
        assertThat(effects.factors()).isEqualTo(21);
        for (int f = 0; f < 21; f++) {
            assertThat(effects.at(0, f)).isEqualTo(f + 1);
            assertThat(effects.at(1, f)).isEqualTo(f % 2 == 0 ? 0 : -(f + 1));
            assertThat(effects.dense()[1][f]).isEqualTo(effects.at(1, f));
        }
        assertThat(effects.moving(1)).containsExactly(1, 3, 5, 7, 9, 11, 13, 15, 17, 19);
        assertThat(effects.sizes(1)).startsWith(-2, -4).hasSize(10);
        assertThat(effects.moving()).hasSize(21);
    }

    /** √(1 + 4 + 9) of three factors; √4 of the one that moves the second point. */
    @Test
    void deviationIsTheRootOfTheSquares() {
        assertThat(effects(3).deviation(0)).isCloseTo(Math.sqrt(14), within(1e-12));
        assertThat(effects(3).deviation(1)).isEqualTo(2);
    }

    @Test
    void someEffectsAreLeftOut() {
        Effects fewer = effects(4).only((point, factor) -> point == 1 ? factor == 3 : factor < 2);
        assertThat(fewer.moving(0)).containsExactly(0, 1);
        assertThat(fewer.moving(1)).containsExactly(3);
        assertThat(fewer.at(1, 3)).isEqualTo(-4);
        assertThat(fewer.at(0, 3)).isZero();
        assertThat(fewer.factors()).isEqualTo(4);
        assertThat(fewer.moving()).containsExactly(0, 1, 3);
    }

    private static Factor factor(double hz, int... readings) {
        Entries entries = new Entries();
        for (int reading : readings) {
            entries.add(reading, 0, 0.5);
        }
        return new Factor(new Factor.Name("yard", "noise", "one", hz), SharedBy.READING, entries);
    }

    @Test
    void aDrawIsKnownByItsNameAndItsBand() {
        assertThat(factor(Double.NaN, 1).key()).isEqualTo("yard|noise|one");
        assertThat(factor(125, 1).key()).isEqualTo("yard|noise|one|125.0");
        assertThat(factor(125, 1).name().cause()).isEqualTo("noise");
        assertThat(factor(125, 1, 3).readings().stream()).containsExactly(1, 3);
    }

    @Test
    void aDrawAsFarAsItMovesSomeReadings() {
        Factor one = factor(125, 1);
        assertThat(one.only(bits(1, 2)).entries()).isSameAs(one.entries());
        assertThat(one.only(bits(2)).entries().size()).isZero();
        Factor three = factor(125, 1, 2, 3);
        assertThat(three.only(bits(1, 3)).readings().stream()).containsExactly(1, 3);
        assertThat(three.only(bits(1, 2, 3)).entries()).isSameAs(three.entries());
        assertThat(three.only(bits(1)).key()).isEqualTo(three.key());
    }

    /** 12 and 20 less 4, 4 less them; over 4, and 4 over them. */
    @Test
    void repeatsAreHeldAgainstTheOtherSide() {
        assertThat(held(false, false)).containsExactly(8, 16);
        assertThat(held(true, false)).containsExactly(-8, -16);
        assertThat(held(false, true)).containsExactly(3, 5);
        assertThat(held(true, true)).containsExactly(1 / 3.0, 0.2);
    }

    private static double[] held(boolean isFirst, boolean ratio) {
        double[] numbers = {12, 20};
        new Repeats.Other(new Formula.Mean(List.of()), isFirst, ratio).hold(numbers, new double[] {4, 4});
        return numbers;
    }

    /**
     * Two numbers d apart with a standard uncertainty of 1 each: Σ = d²/2, against χ² of one degree of freedom, 6.634897 at
     * 1 % and 10.827566 at 0.1 %: d = 3.64277 and 4.65351.
     */
    @Test
    void scatterIsTestedByChiSquare() {
        double[][] variance = {{1}, {1}};
        assertThat(new ScatterTest(1).exceeds(variance, new double[][] {{0}, {3.6428}}, 0))
                .isTrue();
        assertThat(new ScatterTest(1).exceeds(variance, new double[][] {{0}, {3.6427}}, 0))
                .isFalse();
        assertThat(new ScatterTest(10).exceeds(variance, new double[][] {{4.6536}, {0}}, 0))
                .isTrue();
        assertThat(new ScatterTest(10).exceeds(variance, new double[][] {{4.6534}, {0}}, 0))
                .isFalse();
    }

    /** Three numbers, two degrees of freedom: χ² 9.210340. −d, 0, d: Σ = 2 d², d = 2.14597. */
    @Test
    void threeNumbersHaveTwoDegreesOfFreedom() {
        double[][] variance = {{1}, {1}, {1}};
        assertThat(new ScatterTest(1).exceeds(variance, new double[][] {{1 - 2.1461}, {1}, {1 + 2.1461}}, 0))
                .isTrue();
        assertThat(new ScatterTest(1).exceeds(variance, new double[][] {{1 - 2.1459}, {1}, {1 + 2.1459}}, 0))
                .isFalse();
    }

    /** Variances of 1 and 4: 0 and x have the weighted mean x/5, Σ = x²/25 + (4 x/5)²/4 = x²/5: x = 5.75973. */
    @Test
    void theMoreCertainNumberWeighsMore() {
        double[][] variance = {{9, 1}, {9, 4}};
        assertThat(new ScatterTest(1).exceeds(variance, new double[][] {{0, 0}, {0, 5.7598}}, 1))
                .isTrue();
        assertThat(new ScatterTest(1).exceeds(variance, new double[][] {{0, 0}, {0, 5.7597}}, 1))
                .isFalse();
    }

    @Test
    void whatIsDeclaredExactMayNotScatterAtAll() {
        double[][] variance = {{0}, {0}};
        assertThat(new ScatterTest(1).exceeds(variance, new double[][] {{2}, {2}}, 0))
                .isFalse();
        assertThat(new ScatterTest(1).exceeds(variance, new double[][] {{2}, {2.001}}, 0))
                .isTrue();
        double[][] second = {{1}, {0}};
        assertThat(new ScatterTest(1).exceeds(second, new double[][] {{2}, {2.001}}, 0))
                .isTrue();
    }

    /** Members 0 and 1 read the open ear 9; of the other side, member 2 has an open ear of its own. */
    @Test
    void whatEveryMemberOfASideHas() {
        Everybody everybody = new Everybody(
                List.of(List.of(new int[] {0, 9}, new int[] {1, 9}), List.of(new int[] {2, 8}, new int[] {3})));
        assertThat(everybody.shares(bits(9))).isTrue();
        assertThat(everybody.shares(bits(8))).isFalse();
        assertThat(everybody.shares(bits(0, 1))).isTrue();
        assertThat(everybody.shares(bits(2, 3))).isTrue();
        assertThat(everybody.shares(bits(0, 2))).isFalse();
    }

    private static BitSet bits(int... of) {
        BitSet bits = new BitSet();
        for (int bit : of) {
            bits.set(bit);
        }
        return bits;
    }
}
