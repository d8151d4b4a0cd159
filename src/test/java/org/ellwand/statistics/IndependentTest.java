package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The same numbers by software that was written by others. */
class IndependentTest {
    /** Base R takes |δ| up to 37.62 only. */
    private static final double MOST_DELTA_OF_R = 37.5;

    private final List<String> questions = new ArrayList<>();
    private final List<Double> ours = new ArrayList<>();

    private void ask(double our, String name, Object... numbers) {
        ours.add(our);
        StringBuilder question = new StringBuilder(name);
        for (Object number : numbers) {
            question.append(' ').append(number);
        }
        questions.add(question.toString());
    }

    private void compare(Independent other, double tolerance) {
        List<Double> theirs = other.answers(questions);
        for (int i = 0; i < ours.size(); i++) {
            assertThat(ours.get(i))
                    .as("%s: %s", other, questions.get(i))
                    .isCloseTo(theirs.get(i), within(tolerance * Math.max(1, Math.abs(theirs.get(i)))));
        }
    }

    @ParameterizedTest
    @EnumSource
    void noncentralT(Independent other) {
        for (int nu : new int[] {1, 2, 3, 5, 9, 19, 42, 100, 300, 1000}) {
            for (double delta : new double[] {0, 0.3, -2.5, 4.0, 12.5, -25, 37.5, 40, -40}) {
                if (other == Independent.PYTHON || Math.abs(delta) <= MOST_DELTA_OF_R) {
                    askNoncentralT(nu, delta);
                }
            }
        }
        compare(other, other == Independent.PYTHON ? 1e-10 : 1e-9);
    }

    private void askNoncentralT(int nu, double delta) {
        NoncentralT t = NoncentralT.of(nu, delta);
        for (double off : new double[] {-5, -2, -0.5, 0, 0.5, 2, 5, 30}) {
            double at = delta + off * Math.sqrt(1 + delta * delta / (2 * nu));
            ask(t.atMost(at), "noncentral_t", at, nu, delta);
        }
    }

    /** The same mean over χ, but by an adaptive rule over χ² (over χ for one degree of freedom). */
    @ParameterizedTest
    @EnumSource(names = "PYTHON")
    void noncentralTByAnIntegralOverChiSquared(Independent other) {
        double[][] cases = {{40, 1, 40}, {45, 1000, 40}, {3, 9, 2}, {-30, 5, -20}, {1e6, 1, 40}, {0, 1, -2}, {5, 2.5, 3}
        };
        for (double[] each : cases) {
            double our = NoncentralT.of(each[1], each[2]).atMost(each[0]);
            ask(our, "noncentral_t_by_integral", each[0], each[1], each[2]);
        }
        compare(other, 1e-11);
    }

    @ParameterizedTest
    @EnumSource
    void toleranceFactors(Independent other) {
        for (int n : new int[] {2, 5, 43}) {
            for (double share : new double[] {0.6, 0.95}) {
                for (double confidence : new double[] {0.2, 0.99}) {
                    ask(ToleranceFactor.oneSided(n, share, confidence), "one_sided", n, share, confidence);
                    ask(ToleranceFactor.twoSided(n, share, confidence), "two_sided", n, share, confidence);
                }
            }
        }
        compare(other, 1e-8);
    }

    @ParameterizedTest
    @EnumSource
    void sharesWithACommonError(Independent other) {
        double[][] cases = {
            {2, 0.9, 0.2, 1, -30, 25, 0.3},
            {5, 0.8, 0, 1, -3, 3, 2.5},
            {10, 0.9, 0.2, 1, -3, 4, 0.3},
            {40, 0.95, 1.5, 0.4, -3, 3, 0.5},
            {10, 0.8, 3.2, 0.5, -3, 3, 1},
        };
        for (double[] c : cases) {
            NormalSample sample = new NormalSample((int) c[0], c[2], c[3]);
            double both = new NormalShare(sample, new Limits(c[4], c[5]), c[6]).confidence(c[1]);
            ask(both, "shifted_fit", (int) c[0], c[1], c[2], c[3], c[4], c[5], c[6]);
            double lower = new NormalShare(sample, Limits.atLeast(c[4]), c[6]).confidence(c[1]);
            ask(lower, "shifted_one_sided", (int) c[0], c[1], c[2] - c[4], c[3], c[6]);
        }
        compare(other, 2e-7);
    }

    @ParameterizedTest
    @EnumSource
    void counts(Independent other) {
        for (int n : new int[] {1, 3, 10, 59, 400}) {
            for (int inside : new int[] {1, (n + 1) / 2, n - n / 10, n}) {
                BinomialShare share = new BinomialShare(n, inside);
                ask(share.chanceThisBad(0.8), "binomial_at_most", inside, n, 0.8);
                ask(share.confidence(0.95), "binomial_at_most", inside - 1, n, 0.95);
                ask(share.shareAtLeast(0.95), "share_at_least", inside, n, 0.95);
            }
        }
        compare(other, 1e-9);
    }
}
