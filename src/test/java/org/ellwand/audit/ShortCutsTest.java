package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Session;
import org.ellwand.quantity.Outcome;
import org.ellwand.statistics.ControlledErrors;
import org.ellwand.statistics.DrawnErrors;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.NormalErrors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every short cut against the plain simulation of many trials: probabilities within 0.002 near the decision limits 0.05
 * and 0.95, within 0.005 elsewhere, with 0.6 dB of independent noise; with more where a test says so.
 */
@Tag("slow")
class ShortCutsTest {
    private static final int TRIALS = 400_000;
    private static final int JOINT_TRIALS = 100_000;
    private static final String WHERE =
            "quantity: attenuation, setting: flood, level: 94 dB SPL, bands: 125 Hz to 8 kHz, ";
    private static final String EVERY_BAND = WHERE + "statistic: every band, limit: at least 15 dB";

    private enum Known {
        DECLARED(new Sittings(true, 3, 1, 0.8, 0.6)),
        LOUD_NOISE(new Sittings(true, 2, 1, 0.5, 2)),
        REPEATS(new Sittings(false, 4, 3, 0.8, 0.6)),
        FEW_REPEATS(new Sittings(false, 2, 2, 0.8, 0.6));

        private final Sittings sittings;

        Known(Sittings sittings) {
            this.sittings = sittings;
        }

        Session session() {
            return sittings.session("crew-01", name());
        }
    }

    private static void hold(Errors shortCut, double[] draws) {
        hold(shortCut, draws, 0.002, 0.005);
    }

    private static void hold(Errors shortCut, double[] draws, double nearDecision, double elsewhere) {
        Errors plain = new DrawnErrors(draws);
        for (double p : new double[] {0.01, 0.05, 0.2, 0.5, 0.8, 0.95, 0.99}) {
            double tolerance = p == 0.05 || p == 0.95 ? nearDecision : elsewhere;
            assertThat(shortCut.atMost(plain.quantile(p))).as("P %s", p).isCloseTo(p, within(tolerance));
        }
        double u = plain.standardUncertainty();
        assertThat(shortCut.standardUncertainty()).isCloseTo(u, within(3 * elsewhere * u));
    }

    /** Closed forms of linear numbers: normal errors where all is declared, else with the t of groups of repeats. */
    @ParameterizedTest
    @EnumSource(Known.class)
    void closedForms(Known known) {
        Workings workings = Workings.of(EVERY_BAND, Outcome.CURVE, known.session());
        Errors[] closed = PointMaker.closed(workings.estimates());
        boolean repeats = known == Known.REPEATS || known == Known.FEW_REPEATS;
        assertThat(workings.estimates().groups).hasSize(repeats ? 2 : 0);
        double[][] draws = workings.draws(TRIALS);
        for (int p : new int[] {0, 9, 18}) {
            assertThat(closed[p]).isInstanceOf(repeats ? MixedErrors.class : NormalErrors.class);
            hold(closed[p], draws[p]);
        }
    }

    private static Workings overall(Known known) {
        String rule = WHERE + "statistic: overall, weighting: A, limit: at least 15 dB";
        return Workings.of(rule, Outcome.OVERALL, known.session());
    }

    private static Workings octaves(Known known) {
        String rule = WHERE + "resolution: octave, statistic: every band, limit: at least 15 dB";
        return Workings.of(rule, Outcome.CURVE, known.session());
    }

    /** Ten thousand draws beside a linear control, of one sum of energies. */
    @ParameterizedTest
    @EnumSource(names = "LOUD_NOISE", mode = EnumSource.Mode.EXCLUDE)
    void overallBesideItsControl(Known known) {
        againstPlainTrials(overall(known), 0.002, 0.005, 0);
    }

    /** The same of octaves summed from third octaves. */
    @ParameterizedTest
    @EnumSource(names = "LOUD_NOISE", mode = EnumSource.Mode.EXCLUDE)
    void octavesBesideTheirControl(Known known) {
        Workings workings = octaves(known);
        assertThat(workings.estimates().size()).isEqualTo(7);
        againstPlainTrials(workings, 0.002, 0.005, 0, 3, 6);
    }

    /**
     * With 2 dB of independent noise per band a sum is too far from linear for ten thousand draws: this holds what they
     * give in this sitting, twice the error that is promised; other sittings show up to 0.0044 near the limits.
     */
    @Test
    void loudNoiseCostsAccuracy() {
        againstPlainTrials(overall(Known.LOUD_NOISE), 0.004, 0.01, 0);
        againstPlainTrials(octaves(Known.LOUD_NOISE), 0.004, 0.01, 0, 3, 6);
    }

    private static void againstPlainTrials(Workings workings, double nearDecision, double elsewhere, int... points) {
        Estimates estimates = workings.estimates();
        Simulation plain = new Simulation(estimates, workings.preparation().levelsDb(), TRIALS);
        for (int p : points) {
            Errors judged = workings.evaluation().points().get(p).errors();
            assertThat(judged).isInstanceOf(ControlledErrors.class);
            // The linear part has mean 0; leaving its sample mean in would only add sampling error.
            double inflation = mean(plain.errors()[p]) - mean(plain.linear()[p]);
            double shift = -2 * inflation + estimates.centreShift[p];
            double[] moved =
                    Arrays.stream(plain.errors()[p]).map(d -> d + shift).toArray();
            hold(judged, moved, nearDecision, elsewhere);
        }
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static Stream<Interval> limits() {
        return Stream.of(Interval.atLeast(20, Unit.DB), Interval.atMost(20, Unit.DB), Interval.of(10, 30, Unit.DB));
    }

    /** The joint probability lies between the smallest probability and so many times that as there are points. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0005, 0.0026, 0.01, 0.05, 0.2})
    void boundsOfTheJointTail(double smallest) {
        for (Known known : new Known[] {Known.DECLARED, Known.LOUD_NOISE}) {
            Workings workings = Workings.of(EVERY_BAND, Outcome.CURVE, known.session());
            JointTail tail = tail(workings);
            limits().forEach(limit -> {
                double joint = simulate(tail, workings, limit, smallest);
                int points = workings.evaluation().points().size();
                assertThat(joint)
                        .isBetween(
                                smallest - sampling(smallest),
                                Math.min(1, points * smallest) + sampling(Math.min(0.5, points * smallest)));
            });
        }
    }

    /** Whatever bound or simulation that stopped early is given, it decides as all trials do. */
    @Test
    void shortJointTailDecidesAsAllTrials() {
        for (Known known : new Known[] {Known.DECLARED, Known.LOUD_NOISE}) {
            Workings workings = Workings.of(EVERY_BAND, Outcome.CURVE, known.session());
            JointTail tail = tail(workings);
            for (double smallest : new double[] {0.0005, 0.002, 0.0035, 0.02, 0.04, 0.06}) {
                limits().forEach(limit -> {
                    double joint = simulate(tail, workings, limit, smallest);
                    double shorter =
                            tail.probability(workings.evaluation().points().all(), limit, smallest, 0.05);
                    assertThat(shorter <= 0.05).as("%s: %s", smallest, joint).isEqualTo(joint <= 0.05);
                });
            }
        }
    }

    /** Bands that move as one: the worst of them is as probable as each. */
    @Test
    void jointTailOfOneCommonCause() {
        Workings workings =
                Workings.of(EVERY_BAND, Outcome.CURVE, new Sittings(true, 1, 1, 1, 0).session("crew-01", "common"));
        for (double smallest : new double[] {0.01, 0.05, 0.2}) {
            assertThat(simulate(tail(workings), workings, Interval.atLeast(20, Unit.DB), smallest))
                    .isCloseTo(smallest, within(sampling(smallest)));
        }
    }

    /** Bands that share nothing: 1 − (1 − p)^n. */
    @Test
    void jointTailOfIndependentBands() {
        Workings workings =
                Workings.of(EVERY_BAND, Outcome.CURVE, new Sittings(true, 1, 1, 0, 1).session("crew-01", "apart"));
        int points = workings.evaluation().points().size();
        assertThat(points).isEqualTo(19);
        for (double smallest : new double[] {0.001, 0.0026, 0.01, 0.05}) {
            double expected = 1 - Math.pow(1 - smallest, points);
            assertThat(simulate(tail(workings), workings, Interval.atLeast(20, Unit.DB), smallest))
                    .isCloseTo(expected, within(sampling(expected)));
        }
    }

    private static JointTail tail(Workings workings) {
        return new JointTail(workings.evaluation().subjects(), JOINT_TRIALS);
    }

    /** All trials: nothing lies clearly on one side of a decision that is no number. */
    private static double simulate(JointTail tail, Workings workings, Interval limit, double smallest) {
        return tail.simulate(workings.evaluation().points().all(), limit, smallest, Double.NaN);
    }

    /** Four standard errors. */
    private static double sampling(double probability) {
        return 4 * Math.sqrt(probability * (1 - probability) / JOINT_TRIALS);
    }
}
