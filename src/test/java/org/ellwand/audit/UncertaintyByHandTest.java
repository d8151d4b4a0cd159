package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.ellwand.acoustics.Resolution;
import org.ellwand.claim.Statistic;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Outcome;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What declared causes and observed scatter add to a number, cause by cause, and how they are drawn; levels are invented. */
class UncertaintyByHandTest {
    private static final int TRIALS = 20_000;
    private static final String TWO_BANDS =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz to 2 kHz, statistic: ";
    private static final String MEAN = TWO_BANDS + "mean, limit: at least 10 dB";

    private static Bench declared() {
        return new Bench("yard", Resolution.OCTAVE)
                .cause("calibration", 0.7, SharedBy.SESSION, false)
                .cause("insertion", 1.2, SharedBy.INSERTION, false)
                .cause("reading", 0.5, SharedBy.READING, true);
    }

    private static Bench worn(Bench bench, double... levelsDb) {
        bench.reading("device=open ear, stimulus=n94", 1000, 80, 80);
        for (int i = 0; i < levelsDb.length; i++) {
            bench.worn("insertion=" + (i + 1), levelsDb[i], levelsDb[i]);
        }
        return bench;
    }

    private static List<Contribution> contributions(String rule, Session session) {
        return Bench.judge(rule, session).cells().get(0).contributions();
    }

    /**
     * Of two insertions each adds half of 1.2 dB; a reading in place half of 0.5/√2 dB, the open ear the whole of it. The
     * calibration cancels.
     */
    @Test
    void everyCauseAddsItsPart() {
        List<Contribution> parts =
                contributions(MEAN, worn(declared(), 50, 50.1).session());
        assertThat(parts)
                .extracting(Contribution::cause)
                .containsExactly("insertion", "insertion", "reading", "reading", "reading");
        double[] effects = {0.6, 0.6, 0.5 / Math.sqrt(2), 0.25 / Math.sqrt(2), 0.25 / Math.sqrt(2)};
        for (int i = 0; i < effects.length; i++) {
            assertThat(parts.get(i).effect()).isCloseTo(effects[i], within(1e-9));
            assertThat(parts.get(i).degreesOfFreedom()).isEmpty();
        }
    }

    /**
     * Nothing declared: three insertions 1 dB apart scatter by 1/√3 dB, with two degrees of freedom, and hold the errors of the
     * readings in place; of two takes of the open ear 0.4 dB apart the mean has 0.2 dB, with one.
     */
    @Test
    void observedScatterHasItsDegreesOfFreedom() {
        Bench bench = new Bench("yard", Resolution.OCTAVE);
        bench.openEar("take=1", 80, 80);
        bench.openEar("take=2", 80.4, 80.4);
        for (int i = 0; i < 3; i++) {
            bench.worn("insertion=" + i, 50 + i, 50 + i);
        }
        List<Contribution> parts = contributions(MEAN, bench.session());
        assertThat(parts).hasSize(2);
        assertThat(parts.get(0).cause()).isEqualTo("observed scatter");
        assertThat(parts.get(0).instance()).isEqualTo("insertions");
        assertThat(parts.get(0).effect()).isCloseTo(1 / Math.sqrt(3), within(1e-9));
        assertThat(parts.get(0).degreesOfFreedom()).isEqualTo(OptionalInt.of(2));
        assertThat(parts.get(1).instance()).isEqualTo("open ear");
        assertThat(parts.get(1).effect()).isCloseTo(0.2, within(1e-9));
        assertThat(parts.get(1).degreesOfFreedom()).isEqualTo(OptionalInt.of(1));
    }

    /** The insertion cause is declared and no reading cause: the takes' deviation of √2 · 0.2 dB is in every reading in place. */
    @Test
    void takesOfTheOpenEarSpeakForReadingsInPlaceToo() {
        Bench bench = new Bench("yard", Resolution.OCTAVE).cause("insertion", 0.9, SharedBy.INSERTION, false);
        bench.openEar("take=1", 80, 80);
        bench.openEar("take=2", 80.4, 80.4);
        bench.worn("insertion=1", 50, 50);
        bench.worn("insertion=2", 50, 50);
        List<Contribution> parts = contributions(MEAN, bench.session());
        assertThat(parts).extracting(Contribution::cause).containsExactly("insertion", "insertion", "observed scatter");
        assertThat(parts.get(0).effect()).isCloseTo(0.45, within(1e-9));
        // 0.2 of the open ear's mean, and √2 · 0.2 over two in each of two readings: √(0.04 + 2 · 0.02).
        assertThat(parts.get(2).effect()).isCloseTo(Math.sqrt(0.08), within(1e-9));
    }

    /** Insertions 8 dB apart are more than 1.2 dB explain: their scatter, 8/2 dB, replaces insertion and reading in place. */
    @Test
    void scatterThatIsLargerThanDeclaredIsUsed() {
        Judgement judgement = Bench.judge(MEAN, worn(declared(), 46, 54).session());
        assertThat(judgement.remarks()).extracting(Remark::key).contains("more-scatter");
        List<Contribution> parts = judgement.cells().get(0).contributions();
        assertThat(parts).extracting(Contribution::cause).containsExactly("observed scatter", "reading");
        assertThat(parts.get(0).effect()).isCloseTo(4, within(1e-9));
        assertThat(parts.get(1).effect()).isCloseTo(0.5 / Math.sqrt(2), within(1e-9));
        Judgement band = Bench.judge(
                TWO_BANDS + "every band, limit: at least 10 dB",
                worn(declared(), 46, 54).session());
        assertThat(band.remarks())
                .filteredOn(r -> r.key().equals("more-scatter-at-points"))
                .singleElement()
                .satisfies(
                        r -> assertThat(r.figures()).containsEntry("points", 2).containsEntry("of", 2));
    }

    /** The larger of two independent bands with u = σ lies σ/√π above, the smaller below, their distance is 2 σ/√π. */
    @ParameterizedTest
    @CsvSource({"HIGHEST, 1", "LOWEST, -1", "SPREAD, 2"})
    void whatNoiseAddsToAnExtreme(Statistic statistic, double times) {
        Bench bench = new Bench("yard", Resolution.OCTAVE).cause("reading", 0.5, SharedBy.READING, true);
        Estimates estimates = Workings.of(
                        TWO_BANDS + "every band, limit: at least 10 dB",
                        Outcome.CURVE,
                        worn(bench, 50).session())
                .estimates();
        double sigma = 0.5 * Math.sqrt(2);
        assertThat(estimates.normalDeviation(0)).isCloseTo(sigma, within(1e-12));
        // 5000 draws scatter by sigma/70 at most.
        assertThat(Extremes.correction(statistic, estimates, 100_000))
                .isCloseTo(times * sigma / Math.sqrt(Math.PI), within(0.04));
    }

    /** Variances 1.2² + 2 · 0.5² in each band, 1.2² between them. */
    @Test
    void jointDrawsHaveTheCovarianceOfTheBands() {
        Estimates estimates = Workings.of(
                        TWO_BANDS + "every band, limit: at least 10 dB",
                        Outcome.CURVE,
                        worn(declared(), 50).session())
                .estimates();
        double variance = 1.2 * 1.2 + 2 * 0.25;
        for (double[][] errors : List.of(new JointDraws(estimates).errors(TRIALS), plain(estimates))) {
            assertThat(product(errors[0], errors[0])).isCloseTo(variance, within(0.06));
            assertThat(product(errors[1], errors[1])).isCloseTo(variance, within(0.06));
            assertThat(product(errors[0], errors[1])).isCloseTo(1.2 * 1.2, within(0.06));
        }
    }

    private static double[][] plain(Estimates estimates) {
        double[][] errors = new double[2][TRIALS];
        new Draws(estimates, TRIALS).next(errors, TRIALS);
        return errors;
    }

    private static double product(double[] one, double[] other) {
        double sum = 0;
        for (int t = 0; t < one.length; t++) {
            sum += one[t] * other[t];
        }
        return sum / one.length;
    }

    /** Of a sum that is dominated by one band it is nearly linear; of a linear number exactly. */
    @Test
    void simulatedErrorsOfALinearNumberAreItsLinearOnes() {
        Workings workings =
                Workings.of(MEAN, Outcome.MEAN, worn(declared(), 50, 50.1).session());
        Simulation simulation =
                new Simulation(workings.estimates(), workings.preparation().levelsDb(), 1200);
        assertThat(simulation.errors()[0]).hasSize(1200);
        for (int t = 0; t < 1200; t++) {
            assertThat(simulation.errors()[0][t]).isCloseTo(simulation.linear()[0][t], within(1e-9));
        }
        double u = workings.estimates().normalDeviation(0);
        assertThat(Math.sqrt(product(simulation.errors()[0], simulation.errors()[0])))
                .isCloseTo(u, within(0.1));
        assertThat(simulation.errors()[0][0]).isNotEqualTo(simulation.errors()[0][500]);
    }

    /** The same where observed scatter stands for insertions and readings in place. */
    @Test
    void simulatedErrorsLeaveOutWhatScatterReplaced() {
        Workings workings =
                Workings.of(MEAN, Outcome.MEAN, worn(declared(), 46, 54).session());
        Simulation simulation =
                new Simulation(workings.estimates(), workings.preparation().levelsDb(), 600);
        for (int t = 0; t < 600; t++) {
            assertThat(simulation.errors()[0][t]).isCloseTo(simulation.linear()[0][t], within(1e-9));
        }
    }

    /** Ten insertions of 41 to 50 dB, nothing declared: scale √(11/12) dB, and t of nine degrees of freedom has 9/7 of its square. */
    @Test
    void drawsOfObservedScatterAreOfT() {
        Bench bench = new Bench("yard", Resolution.OCTAVE);
        worn(bench, 41, 42, 43, 44, 45, 46, 47, 48, 49, 50);
        Workings workings = Workings.of(MEAN, Outcome.MEAN, bench.session());
        Estimates estimates = workings.estimates();
        double variance = 11 / 12.0 * 9 / 7;
        assertThat(estimates.groups.get(0).scatter(0).scale()).isCloseTo(Math.sqrt(11 / 12.0), within(1e-12));
        double[][] plain = new double[1][TRIALS];
        new Draws(estimates, TRIALS).next(plain, TRIALS);
        assertThat(product(plain[0], plain[0])).isCloseTo(variance, within(0.05));
        double[][] joint = new JointDraws(estimates).errors(TRIALS);
        assertThat(product(joint[0], joint[0])).isCloseTo(variance, within(0.05));
        Simulation simulation = new Simulation(estimates, workings.preparation().levelsDb(), TRIALS);
        assertThat(product(simulation.errors()[0], simulation.errors()[0])).isCloseTo(variance, within(0.05));
        assertThat(product(simulation.linear()[0], simulation.linear()[0])).isCloseTo(variance, within(0.05));
    }

    private static final String CRITERION = "quantity: criterion level, criterion: 73 dB(A), bands: 1 kHz,"
            + " referred to: eardrum, limit: at most 90 dB SPL";

    /** Found half way between two levels, a reading at either counts half, an insertion that both share whole. */
    @Test
    void contributionsToALevelThatIsLookedFor() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.3, SharedBy.READING, true)
                .reading("device=Skerry, stimulus=n62, insertion=1", 1000, 65)
                .reading("device=Skerry, stimulus=n78, insertion=1", 1000, 81)
                .session();
        List<Contribution> parts = contributions(CRITERION, session);
        assertThat(parts).extracting(Contribution::cause).containsExactly("insertion", "reading", "reading");
        assertThat(parts.get(0).effect()).isCloseTo(0.5, within(1e-6));
        assertThat(parts.get(1).effect()).isCloseTo(0.15, within(1e-6));
        assertThat(parts.get(2).effect()).isCloseTo(0.15, within(1e-6));
    }

    /** Two insertions 2 dB apart at every level: 70 and 72 dB, of which the mean has 1 dB. */
    @Test
    void observedScatterOfALevelThatIsLookedFor() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .reading("device=Skerry, stimulus=n62, insertion=1", 1000, 65)
                .reading("device=Skerry, stimulus=n78, insertion=1", 1000, 81)
                .reading("device=Skerry, stimulus=n62, insertion=2", 1000, 63)
                .reading("device=Skerry, stimulus=n78, insertion=2", 1000, 79)
                .session();
        assertThat(Bench.judge(CRITERION, session).value().orElseThrow()).isCloseTo(71, within(1e-9));
        List<Contribution> parts = contributions(CRITERION, session);
        assertThat(parts).hasSize(1);
        assertThat(parts.get(0).effect()).isCloseTo(1, within(1e-6));
        assertThat(parts.get(0).degreesOfFreedom()).isEqualTo(OptionalInt.of(1));
    }

    /** An onset is told from gains of the same insertion: what it shares cancels, and leaves no rounding behind. */
    @Test
    void whatAllLevelsShareDoesNotMoveAnOnset() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n62", 1000, 60)
                .reading("device=open ear, stimulus=n78", 1000, 76)
                .reading("device=open ear, stimulus=n94", 1000, 92)
                .reading("device=Skerry, stimulus=n62, insertion=1", 1000, 55)
                .reading("device=Skerry, stimulus=n78, insertion=1", 1000, 71)
                .worn("insertion=1", 81)
                .session();
        List<Contribution> parts = contributions(
                "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz, limit: at least 70 dB SPL", session);
        assertThat(parts).extracting(Contribution::cause).containsOnly("reading");
        // 6 dB fall in 16 dB, 2.6667 dB of level for each dB; half way both ends count half: 0.2 · 2.6667 · (1, 0.5,
        // 0.5).
        assertThat(parts.get(0).effect()).isCloseTo(0.2 * 16 / 6, within(1e-6));
        assertThat(parts.get(5).effect()).isCloseTo(0.1 * 16 / 6, within(1e-6));
        assertThat(parts).hasSize(6);
    }

    /**
     * Insertions of 60 and 70 dB and of 70.5 and 60 dB in two bands: overall 70.41 and 70.87 dB, their mean curve's 68.14 dB.
     * The draws centre as far below that as the mean of both lies above it (n = 2).
     */
    @Test
    void aSumOfEnergiesWhoseRepeatsWereSeenIsMovedByThem() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("reading", 0, SharedBy.READING, true)
                .worn("insertion=1", 60, 70)
                .worn("insertion=2", 70.5, 60)
                .session();
        String rule = "quantity: output level, referred to: eardrum, level: 94 dB SPL, bands: 1 kHz to 2 kHz,"
                + " statistic: overall, weighting: Z, limit: at most ";
        double value = 10 * Math.log10(Math.pow(10, 6.525) + Math.pow(10, 6.5));
        double first = 10 * Math.log10(Math.pow(10, 6) + Math.pow(10, 7));
        double second = 10 * Math.log10(Math.pow(10, 7.05) + Math.pow(10, 6));
        double centre = value - ((first + second) / 2 - value);
        Judgement judgement =
                Bench.judge(rule + String.format(java.util.Locale.ROOT, "%.6f", centre) + " dB SPL", session);
        assertThat(judgement.value().orElseThrow()).isCloseTo(value, within(1e-9));
        assertThat(judgement.probability().orElseThrow()).isCloseTo(0.5, within(0.03));
    }
}
