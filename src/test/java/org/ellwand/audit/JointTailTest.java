package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Outcome;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.SeriesErrors;
import org.junit.jupiter.api.Test;

/**
 * How probable the worst of two bands looks as bad as 0.03 by chance: 1 − 0.97² = 0.0591 where the bands err independently,
 * 0.03 where they err together. Shares of 40 000 draws scatter by 0.0012.
 */
class JointTailTest {
    private static final String EVERY_BAND = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz to 2 kHz,"
            + " statistic: every band, limit: at least 20 dB";
    private static final Interval LIMIT = Interval.atLeast(20, Unit.DB);
    private static final int TRIALS = 40_000;

    private static Evaluation evaluation(boolean independent) {
        return Workings.of(
                        EVERY_BAND,
                        Outcome.CURVE,
                        new Bench("crew-01", Resolution.OCTAVE)
                                .cause("insertion", independent ? 0 : 1, SharedBy.INSERTION, false)
                                .cause("reading", independent ? 1 : 0, SharedBy.READING, true)
                                .reading("device=open ear, stimulus=n94", 1000, 80, 80)
                                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60, 60)
                                .session())
                .evaluation();
    }

    private static double simulated(boolean independent, double smallest, double decisive) {
        Evaluation evaluation = evaluation(independent);
        return new JointTail(evaluation.subjects(), TRIALS)
                .simulate(evaluation.points().all(), LIMIT, smallest, decisive);
    }

    @Test
    void independentBandsLookBadMoreOften() {
        assertThat(simulated(true, 0.03, 0.0591)).isCloseTo(0.0591, within(0.005));
    }

    @Test
    void bandsThatErrTogetherAreOne() {
        assertThat(simulated(false, 0.03, 0.03)).isCloseTo(0.03, within(0.004));
    }

    /** Beyond 20 dB by as much as from 21 dB up: both ends of a limit as narrow as half of u. */
    @Test
    void bothEndsCount() {
        Evaluation evaluation = evaluation(false);
        double u = evaluation.points().get(0).errors().standardUncertainty();
        Interval narrow = Interval.of(20, 20 + u / 2, Unit.DB);
        double bad = new JointTail(evaluation.subjects(), TRIALS)
                .simulate(evaluation.points().all(), narrow, 0.03, 0.04);
        double other = new NormalErrors(1).atMost(-(NormalErrors.z(0.97) + 0.5));
        assertThat(bad).isCloseTo(0.03 + other, within(0.004));
    }

    /** The bounds decide where they can: 2 · 0.02 is at most 0.05, and 0.06 alone is above it. */
    @Test
    void boundsAreEnough() {
        Evaluation evaluation = evaluation(true);
        List<Points.One> points = evaluation.points().all();
        JointTail undrawn = new JointTail(List.of(), 0);
        assertThat(undrawn.probability(points, LIMIT, 0.02, 0.05)).isCloseTo(0.04, within(1e-9));
        assertThat(undrawn.probability(points, LIMIT, 0.06, 0.05)).isCloseTo(0.06, within(1e-9));
        assertThat(undrawn.probability(points.subList(0, 1), LIMIT, 0.06, 0.05)).isCloseTo(0.06, within(1e-9));
        assertThat(undrawn.probability(points, LIMIT, 0, 0.05)).isZero();
        assertThat(undrawn.probability(points, LIMIT, 0.025, 0.05)).isCloseTo(0.05, within(1e-9));
    }

    /** Where neither bound decides, the draws do. */
    @Test
    void betweenTheBoundsItIsDrawn() {
        Evaluation evaluation = evaluation(true);
        JointTail tail = new JointTail(evaluation.subjects(), TRIALS);
        double probability = tail.probability(evaluation.points().all(), LIMIT, 0.03, 0.059);
        assertThat(probability).isCloseTo(0.0591, within(0.005));
    }

    /** One percent against a half: a thousand draws tell. */
    @Test
    void stopsWhereTheDrawsAreClear() {
        double few = simulated(true, 0.01, 0.5);
        assertThat(few * 1000).isCloseTo(Math.rint(few * 1000), within(1e-9));
        assertThat(few).isBetween(0.005, 0.04);
    }

    /** The last block holds what is left: a share of 2500 draws, not of 3000. */
    @Test
    void drawsThatFillNoBlock() {
        Evaluation evaluation = evaluation(true);
        double share = new JointTail(evaluation.subjects(), 2500)
                .simulate(evaluation.points().all(), LIMIT, 0.03, 0.0591);
        assertThat(share).isCloseTo(0.0591, within(0.008));
        assertThat(share * 2500).isCloseTo(Math.rint(share * 2500), within(1e-9));
    }

    /** What is said of a share of people is shared out over the points (Bonferroni), for nothing of it can be drawn. */
    @Test
    void sharesAreAddedUp() {
        ShareErrors share = ShareErrors.inOrOut(new NormalErrors(1), List.of(1.0, 1.0), 0.5);
        List<Points.One> two = evaluation(true).points().all().stream()
                .map(p -> new Points.One(
                        p.subject(), p.local(), 1, p.hz(), p.lessHz(), p.value(), share, true, p.bound()))
                .toList();
        assertThat(new JointTail(List.of(), 0).probability(two, LIMIT, 0.01, 0.05))
                .isCloseTo(0.02, within(1e-12));
        assertThat(new JointTail(List.of(), 0).probability(two, LIMIT, 0.7, 0.05))
                .isOne();
    }

    /** With a probability of 18 % that 23 dB are at most 20 dB, no claim is false, though no error reaches 3 dB upwards. */
    @Test
    void aLimitThatMayWellHoldDoesNotFail() {
        double[] errors = new double[100];
        Arrays.fill(errors, 1.1);
        Arrays.fill(errors, 0, 18, -5);
        Points.One point = new Points.One(
                0,
                0,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                23,
                new SeriesErrors(errors),
                false,
                Bound.MEASURED);
        Interval limit = Interval.atMost(20, Unit.DB);
        assertThat(new JointTail(List.of(), 0).probability(List.of(point), limit, 0.18, 0.05))
                .isGreaterThan(0.179);
        Decision decision = new Statement(limit, 0.95, new JointTail(List.of(), 0)).every(List.of(point));
        assertThat(decision.probability()).isCloseTo(0.18, within(1e-9));
        assertThat(decision.verdict()).isEqualTo(Verdict.MARGINAL);
    }
}
