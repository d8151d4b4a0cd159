package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.measurement.Chain;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Faults of traces and harmonics, each made by a model; products and numbers are invented. */
public class TraceChecksTest {
    private static final double TAU_S = 0.02;
    private static final List<Double> UP = List.of(0.4, 55.0, 90.0);

    private static MadeSession made() {
        return new MadeSession("yard").timing(0.5, SharedBy.READING).timing(0.5, SharedBy.INSERTION);
    }

    /** Samples that scatter by 0.1 dB. */
    private static MadeSession with(double apartS, double endS, DoubleUnaryOperator levelDb, double ceilingDb) {
        NormalStream draw = new NormalStream(Seeds.of("traces", "faults"));
        int samples = (int) Math.round(endS / apartS) + 1;
        double[] times = new double[samples];
        double[] levels = new double[samples];
        for (int i = 0; i < samples; i++) {
            times[i] = i * apartS;
            levels[i] = Math.min(ceilingDb, levelDb.applyAsDouble(times[i]) + 0.1 * draw.next());
        }
        return made().trace("device=Skerry, setting=flood, insertion=1", UP, times, levels);
    }

    /** 65 dB before; 85 dB just after, and 20 dB less in the end. */
    private static double approach(double t, double tauS) {
        return t < UP.get(0) ? 65 : 65 + 20 * Math.exp(-(t - UP.get(0)) / tauS);
    }

    /** A trace that ends four time constants after the step: its end moves by 0.23 dB. */
    public static Session tooShort() {
        return with(0.0002, UP.get(0) + 4 * TAU_S, t -> approach(t, TAU_S), 200).session();
    }

    /** A sample every 10 ms of a product that takes 4 ms to come near. */
    public static Session coarse() {
        return with(0.01, 1.0, t -> approach(t, 0.002), 200).session();
    }

    /** Five harmonics of which the third hides in a noise of 30 dB a band. */
    public static Session inNoise() {
        return new MadeSession("yard")
                .cause("reading", 0.3, SharedBy.READING)
                .cause("insertion", 0.3, SharedBy.INSERTION)
                .quiet()
                .reading("device=Skerry, setting=flood, insertion=1, stimulus=hush", f -> 30)
                .harmonics("device=Skerry, setting=flood, insertion=1", 500, 80, 31, 32, 20, 12)
                .session();
    }

    private static Finding one(DataCheck check, Session session) {
        List<Finding> findings = Inspecting.by(check, List.of(session));
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    @Test
    void aLevelStillOnItsWayBeforeTheStep() {
        DoubleUnaryOperator recovering = t -> approach(t, TAU_S) + (t < UP.get(0) ? 20 * Math.exp(-t / 0.15) : 0);
        Finding spoilt = one(new TraceStart(), with(0.001, 1, recovering, 200).session());
        assertThat(spoilt.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(spoilt.reading()).contains("step=55 to 90 dB SPL");
        Finding noted = one(
                new TraceStart(),
                with(0.001, 1, t -> approach(t, TAU_S) + 8 * Math.min(0, t - UP.get(0)), 200)
                        .session());
        assertThat(noted.consequence()).isEqualTo(Consequence.NOTED);
        assertThat(noted.text()).startsWith("trace-1.csv: the level moves by 1.6 dB before the step");
    }

    /** The sound steps {@code earlyS} before the step that is stated: 30 dB up, and back by 15 dB with a time constant of 10 ms. */
    private static DoubleUnaryOperator early(double earlyS) {
        double atS = UP.get(0) - earlyS;
        return t -> t < atS ? 55 : 70 + 15 * Math.exp(-(t - atS) / 0.01);
    }

    /** Of 55 dB to 70 dB at least, whichever way the rest is counted, 15 dB stay. */
    @ParameterizedTest
    @ValueSource(doubles = {0.005, 0.02, 0.1, 0.2, 0.3})
    void aStepThatIsStatedTooLate(double earlyS) {
        Finding finding =
                one(new TraceStart(), with(0.001, 2, early(earlyS), 200).session());
        assertThat(finding.remark().key()).isEqualTo("trace-steps-before");
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.measure().orElseThrow().figure()).isBetween(14.8, 30.2);
        // Times are known to a sample.
        for (double soundS : new double[] {0, 0.001}) {
            assertThat(Inspecting.by(
                            new TraceStart(),
                            List.of(with(0.001, 2, early(soundS), 200).session())))
                    .isEmpty();
        }
    }

    private static Session stated(double fromDb, double toDb, DoubleUnaryOperator levelDb) {
        NormalStream draw = new NormalStream(Seeds.of("traces", "direction"));
        double[] times = new double[2001];
        double[] levels = new double[2001];
        for (int i = 0; i < times.length; i++) {
            times[i] = i * 0.001;
            levels[i] = levelDb.applyAsDouble(times[i]) + 0.1 * draw.next();
        }
        return made().trace("device=Skerry, setting=flood", List.of(0.4, fromDb, toDb), times, levels)
                .session();
    }

    /** The sound goes up by 35 dB, and the worn level from 55 dB to 85 dB and back to 70 dB: 15 dB the wrong way for a step down. */
    @Test
    void aLevelThatGoesTheOtherWayThanTheSound() {
        DoubleUnaryOperator up = early(0);
        Finding rises = one(new TraceDirection(), stated(90, 55, up));
        assertThat(rises.remark().key()).isEqualTo("trace-rises");
        assertThat(rises.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(rises.errs()).isEqualTo(Errs.EITHER);
        assertThat(rises.measure().orElseThrow().figure()).isCloseTo(15, org.assertj.core.api.Assertions.within(0.1));
        Finding falls = one(new TraceDirection(), stated(55, 90, t -> -up.applyAsDouble(t)));
        assertThat(falls.remark().key()).isEqualTo("trace-falls");
        assertThat(Inspecting.by(new TraceDirection(), List.of(stated(55, 90, up))))
                .isEmpty();
    }

    /**
     * What a product can do: follow the step at first and turn itself down further than the sound came up; or hold the level where it was. In a
     * step down by 35 dB a gain that then comes up by 38 dB leaves 3.5 dB more than before, and the level fell first.
     */
    @Test
    void aLevelThatFollowsTheSoundFirst() {
        DoubleUnaryOperator mutes = t -> t < 0.4 ? 65 : 58 + 30 * Math.exp(-(t - 0.4) / 0.01);
        DoubleUnaryOperator holds = t -> t < 0.4 ? 65 : 65 + 25 * Math.exp(-(t - 0.4) / 0.01);
        DoubleUnaryOperator opens = t -> t < 0.4 ? 65 : 68.5 - 38.5 * Math.exp(-(t - 0.4) / 0.1);
        assertThat(Inspecting.by(
                        new TraceDirection(),
                        List.of(stated(55, 90, mutes), stated(55, 90, holds), stated(90, 55, opens))))
                .isEmpty();
    }

    /** A disturbance of 20 ms that passes leaves the level where it was. */
    @Test
    void aDisturbanceBeforeTheStepPasses() {
        DoubleUnaryOperator level = t -> approach(t, TAU_S) + (t > 0.2 && t < 0.22 ? 10 : 0);
        assertThat(Inspecting.by(
                        new TraceStart(), List.of(with(0.001, 2, level, 200).session())))
                .isEmpty();
    }

    /**
     * A level without any scatter that comes down from 12 dB above with a time constant of 5 ms, and is there after a tenth of the 0.4 s before the step:
     * the halves of these 0.4 s differ by 12 dB × 5/200 = 0.3 dB.
     */
    @Test
    void aLevelThatGlidesIsNoStep() {
        double[] times = new double[5001];
        double[] levels = new double[5001];
        for (int i = 0; i < times.length; i++) {
            times[i] = i * 0.0004;
            levels[i] = approach(times[i], TAU_S) + (times[i] < UP.get(0) ? 12 * Math.exp(-times[i] / 0.005) : 0);
        }
        Session session = made().trace("device=Skerry, setting=flood, insertion=1", UP, times, levels)
                .session();
        assertThat(Inspecting.by(new TraceStart(), List.of(session))).isEmpty();
    }

    /** The last fifth goes from 1.68 s to 2 s: a step at 1.8 s lies in it, whatever its size. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 3, 12})
    void aLevelThatStepsAtTheEnd(double byDb) {
        DoubleUnaryOperator level = t -> approach(t, TAU_S) + (t > 1.8 ? byDb : 0);
        Finding finding = one(new TraceEnd(), with(0.001, 2, level, 200).session());
        assertThat(finding.remark().key()).isEqualTo("trace-steps-at-end");
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.errs()).isEqualTo(Errs.EITHER);
        assertThat(finding.measure().orElseThrow().figure())
                .isCloseTo(byDb, org.assertj.core.api.Assertions.within(0.1));
    }

    @Test
    void aTraceThatEndsTooSoon() {
        Finding finding = one(new TraceEnd(), tooShort());
        assertThat(finding.errs()).isEqualTo(Errs.READS_LOW);
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(Inspecting.by(
                        new TraceEnd(),
                        List.of(with(0.0002, UP.get(0) + 8 * TAU_S, t -> approach(t, TAU_S), 200)
                                .session())))
                .isEmpty();
    }

    /** The same of a level without any scatter that ends after two time constants. */
    @Test
    void aSmoothTraceThatEndsTooSoon() {
        double[] times = new double[8401];
        double[] levels = new double[8401];
        for (int i = 0; i < times.length; i++) {
            times[i] = i * 0.00005;
            levels[i] = approach(times[i], 0.01);
        }
        Session session = made().trace("device=Skerry, setting=flood, insertion=1", UP, times, levels)
                .session();
        assertThat(one(new TraceEnd(), session).errs()).isEqualTo(Errs.READS_LOW);
    }

    /** The mean square of a level under an exponential time weighting, as IEC 61672-1 has it, sampled every 0.1 ms. */
    private static List<Finding> weighted(double fromDb, double toDb, double constantS, DoubleUnaryOperator levelDb) {
        double apartS = 0.0001;
        double[] times = new double[40_001];
        double[] levels = new double[times.length];
        double square = Math.pow(10, levelDb.applyAsDouble(0) / 10);
        for (int i = 0; i < times.length; i++) {
            times[i] = i * apartS;
            square += -Math.expm1(-apartS / constantS) * (Math.pow(10, levelDb.applyAsDouble(times[i]) / 10) - square);
            levels[i] = 10 * Math.log10(square);
        }
        Session session = made().trace(
                        "device=Skerry, setting=flood",
                        List.of(1.0, fromDb, toDb),
                        times,
                        levels,
                        Optional.of(constantS))
                .session();
        return Inspecting.by(new TraceWeighting(), List.of(session));
    }

    /**
     * An attack from 20 dB above with a time constant of 20 ms takes 20 ms ln(20/3) = 37.9 ms. Under 20 ms of time weighting it is read later; so is one that
     * ends at once after 30 ms, by no more than 4.6 × 20 ms, which is what is read from the full 20 dB. Under 1 ms there is nothing to say of either.
     */
    @Test
    void aTimeWeightingMakesAnAttackLate() {
        DoubleUnaryOperator gliding = t -> t < 1 ? 60 : 65 + 20 * Math.exp(-(t - 1) / 0.02);
        DoubleUnaryOperator sudden = t -> t < 1 ? 60 : t < 1.03 ? 85 : 65;
        for (DoubleUnaryOperator level : List.of(gliding, sudden)) {
            List<Finding> slow = weighted(55, 90, 0.02, level);
            assertThat(slow).hasSize(1);
            assertThat(slow.get(0).errs()).isEqualTo(Errs.READS_HIGH);
            assertThat(slow.get(0).consequence()).isEqualTo(Consequence.UNUSABLE);
            assertThat(slow.get(0).measure().orElseThrow().figure()).isBetween(40.0, 30 + 4.7 * 20);
            assertThat(weighted(55, 90, 0.001, level)).isEmpty();
        }
    }

    /** A release that dips by 15 dB and is back in 100 ms is not seen at all under 0.2 s, and may be of any such length. */
    @Test
    void aTimeWeightingHidesARelease() {
        DoubleUnaryOperator level = t -> t < 1 ? 80 : 70 - 15 * Math.exp(-(t - 1) / 0.06);
        List<Finding> hidden = weighted(90, 55, 0.2, level);
        assertThat(hidden).hasSize(1);
        assertThat(hidden.get(0).errs()).isEqualTo(Errs.EITHER);
        assertThat(hidden.get(0).remark().key()).isEqualTo("trace-weighting-hides");
        assertThat(weighted(90, 55, 0.001, level)).isEmpty();
    }

    @Test
    void samplesTooFarApart() {
        Finding finding = one(new TraceSampling(), coarse());
        assertThat(finding.consequence()).isEqualTo(Consequence.NOTED);
        assertThat(finding.measure().orElseThrow().figure())
                .isCloseTo(10, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(Inspecting.by(
                        new TraceSampling(),
                        List.of(with(0.0005, 1, t -> approach(t, TAU_S), 200).session())))
                .isEmpty();
    }

    @Test
    void aLevelThatMeetsACeiling() {
        DoubleUnaryOperator level = t -> approach(t, TAU_S);
        assertThat(one(new TraceOverload(), with(0.001, 1, level, 80).session()).text())
                .startsWith("trace-1.csv: the level stands still at its highest, 80.0 dB");
        Chain chain = new Chain(
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Amount(82, Unit.DB_SPL, 0)),
                List.of(),
                false,
                List.of());
        assertThat(one(
                                new TraceOverload(),
                                with(0.001, 1, level, 200).chain(chain).session())
                        .remark()
                        .key())
                .isEqualTo("trace-too-loud");
        assertThat(Inspecting.by(
                        new TraceOverload(), List.of(with(0.001, 1, level, 200).session())))
                .isEmpty();
    }

    @Test
    void harmonicsThatAreNoise() {
        Finding finding = one(new HarmonicFloor(), inNoise());
        assertThat(finding.errs()).isEqualTo(Errs.READS_HIGH);
        assertThat(finding.consequence()).isEqualTo(Consequence.BOUNDED);
        assertThat(finding.text()).startsWith("harmonics 2, 3, 4 stand as little as");
        Session flat = new MadeSession("yard")
                .harmonics("device=Skerry, setting=flood", 500, 80, 31, 30.2, 31.4, 30.6)
                .session();
        assertThat(one(new HarmonicFloor(), flat).consequence()).isEqualTo(Consequence.NOTED);
        Session clear = new MadeSession("yard")
                .harmonics("device=Skerry, setting=flood", 500, 80, 41, 35, 31, 26)
                .session();
        assertThat(Inspecting.by(new HarmonicFloor(), List.of(clear))).isEmpty();
    }

    /** A settling level of a thousand numbers under two insertions; the same trace of one reading may show two steps. */
    @Test
    void oneTraceUnderTwoNames() {
        double[] times = IntStream.range(0, 1000).mapToDouble(i -> i / 1000.0).toArray();
        double[] reckoned = IntStream.range(0, 1000)
                .mapToDouble(i -> 80 - 10 * Math.exp(-i / 100.0))
                .toArray();
        NormalStream draw = new NormalStream(Seeds.of("traces", "copied"));
        double[] levels =
                Arrays.stream(reckoned).map(db -> db + 0.1 * draw.next()).toArray();
        String first = "device=Skerry, setting=flood, insertion=1";
        Session copied = made().trace(first, UP, times, levels)
                .trace("device=Skerry, setting=flood, insertion=2", UP, times, levels)
                .session();
        Finding finding = one(new Copies(), copied);
        assertThat(finding.reading()).contains("insertion=2");
        assertThat(finding.text()).startsWith("the same in all 1000 levels as the trace in ");
        Session twoSteps = made().trace(first, UP, times, levels)
                .trace(first, UP, times, levels)
                .session();
        assertThat(Inspecting.by(new Copies(), List.of(twoSteps))).isEmpty();
        Session formula = made().trace(first, UP, times, reckoned)
                .trace("device=Skerry, setting=flood, insertion=2", UP, times, reckoned)
                .session();
        assertThat(Inspecting.by(new Copies(), List.of(formula))).isEmpty();
    }
}
