package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.claim.Product;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The promise of the verdicts, simulated: of claims whose truth lies exactly on the limit at most 5 % pass and at most 5 %
 * fail, under every statistic, with declared causes and with repeats only; and the verdicts are not timid. {@link Stress}
 * does the same with more scenarios.
 */
@Tag("slow")
@Execution(ExecutionMode.CONCURRENT)
class PromiseTest {
    private static final int RUNS = 200;
    private static final int TRIALS = 5000;
    private static final double ERROR = 0.05;
    /** Three standard errors of a share of 5 % in so many runs. */
    private static final double SAMPLING = 3 * Math.sqrt(ERROR * (1 - ERROR) / RUNS);

    static List<PromiseScenario> scenarios() {
        List<PromiseScenario> all = new ArrayList<>();
        for (PromiseScenario.Known known : PromiseScenario.Known.values()) {
            for (int insertions : known == PromiseScenario.Known.DECLARED ? new int[] {1, 3} : new int[] {3, 6}) {
                all.addAll(PromiseScenario.of(new PromiseScenario.Design(
                        known, insertions, PromiseScenario.Causes.ALL, PromiseScenario.Pairing.OPEN_EAR)));
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void atMostFivePercentPassAndAtMostFivePercentFail(PromiseScenario scenario) {
        Product product = scenario.product();
        int passes = 0;
        int fails = 0;
        for (int run = 0; run < RUNS; run++) {
            Verdict verdict = scenario.verdict(product, run, TRIALS);
            passes += verdict == Verdict.PASS ? 1 : 0;
            fails += verdict == Verdict.FAIL ? 1 : 0;
        }
        assertThat((double) passes / RUNS).as("passes").isBetween(scenario.leastPasses(), ERROR + SAMPLING);
        assertThat((double) fails / RUNS).as("fails").isLessThanOrEqualTo(ERROR + SAMPLING);
    }
}
