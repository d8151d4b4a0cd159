package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;

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
        double[] levels = IntStream.range(0, 1000)
                .mapToDouble(i -> 80 - 10 * Math.exp(-i / 100.0))
                .toArray();
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
    }
}
