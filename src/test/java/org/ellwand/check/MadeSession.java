package org.ellwand.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;
import org.ellwand.measurement.Bare;
import org.ellwand.measurement.Cause;
import org.ellwand.measurement.Chain;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.HarmonicReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.measurement.Step;
import org.ellwand.measurement.Stimulus;
import org.ellwand.measurement.Trace;
import org.ellwand.measurement.Uncertainty;

/** An invented session, made in memory; its curves are functions of frequency, in third octaves from 100 Hz to 10 kHz. */
public final class MadeSession {
    public static final List<Band> THIRDS = IntStream.rangeClosed(-10, 10)
            .mapToObj(index -> new Band(Resolution.THIRD_OCTAVE, index))
            .toList();

    private final String id;
    private final String ear;
    private final List<Cause> causes = new ArrayList<>();
    private final Map<String, Stimulus> stimuli = new LinkedHashMap<>();
    private final List<CurveReading> readings = new ArrayList<>();
    private final List<Trace> traces = new ArrayList<>();
    private final List<HarmonicReading> harmonics = new ArrayList<>();
    private Chain chain = Chain.UNSTATED;

    public MadeSession(String id, String ear) {
        this.id = id;
        this.ear = ear;
    }

    public MadeSession(String id) {
        this(id, "crew-01-left");
    }

    String id() {
        return id;
    }

    public MadeSession cause(String name, double sizeDb, SharedBy sharedBy) {
        causes.add(new Cause(
                name,
                sharedBy,
                sharedBy == SharedBy.READING,
                Unit.DB,
                List.of(new Cause.Size(0, Double.POSITIVE_INFINITY, sizeDb))));
        return this;
    }

    public MadeSession sound(String name, String kind, double levelDb) {
        stimuli.put(name, new Stimulus(name, kind, List.of(new Amount(levelDb, Unit.DB_SPL, 0)), Optional.empty()));
        return this;
    }

    public MadeSession peak(String name, double levelDb, double peakDb) {
        Amount peak = new Amount(peakDb, Unit.DB_SPL, 0);
        stimuli.put(name, new Stimulus(name, "music", List.of(new Amount(levelDb, Unit.DB_SPL, 0)), Optional.of(peak)));
        return this;
    }

    public MadeSession chain(Chain said) {
        chain = said;
        return this;
    }

    public MadeSession pink(double levelDb) {
        return sound("pink-" + Math.round(levelDb), "pink noise", levelDb);
    }

    public MadeSession quiet() {
        return sound("hush", Stimulus.QUIET, 20);
    }

    /** A curve of levels under {@code key=value, …} conditions. */
    public MadeSession reading(String conditions, DoubleUnaryOperator levelDbAtHz) {
        return reading(conditions, Reading.Values.LEVELS, THIRDS, levelDbAtHz);
    }

    public MadeSession reading(
            String conditions, Reading.Values values, List<Band> bands, DoubleUnaryOperator levelDbAtHz) {
        Map<Band, Spectrum.Level> levels = new TreeMap<>();
        bands.forEach(band -> levels.put(band, Spectrum.Level.measured(levelDbAtHz.applyAsDouble(band.exactHz()))));
        Spectrum spectrum = new Spectrum(bands.get(0).resolution(), levels);
        Place place = new Place("made.csv", readings.size() + 2, 1);
        readings.add(new CurveReading(named(conditions), values, spectrum, place));
        return this;
    }

    /** A trace of levels; {@code step} is empty or of three numbers: at what time, from and to which level. */
    public MadeSession trace(String conditions, List<Double> step, double[] timeS, double[] levelDb) {
        return trace(conditions, step, timeS, levelDb, Optional.empty());
    }

    /** The same under a time weighting. */
    MadeSession trace(
            String conditions, List<Double> step, double[] timeS, double[] levelDb, Optional<Double> timeConstantS) {
        Optional<Step> stepped = step.isEmpty()
                ? Optional.empty()
                : Optional.of(new Step(
                        new Amount(step.get(0), Unit.SECOND, 3),
                        new Amount(step.get(1), Unit.DB_SPL, 0),
                        new Amount(step.get(2), Unit.DB_SPL, 0)));
        traces.add(new Trace(
                named(conditions),
                stepped,
                Unit.DB_SPL,
                Arrays.stream(timeS).boxed().toList(),
                Arrays.stream(levelDb).boxed().toList(),
                Place.ofFile("trace-" + (traces.size() + 1) + ".csv"),
                timeConstantS));
        return this;
    }

    /** Levels of a tone and its harmonics, by order from 1 on. */
    public MadeSession harmonics(String conditions, double toneHz, double... levelDb) {
        Map<Integer, Double> byOrder = new TreeMap<>();
        for (int i = 0; i < levelDb.length; i++) {
            byOrder.put(i + 1, levelDb[i]);
        }
        harmonics.add(HarmonicReading.of(
                named(conditions),
                Optional.of(new Amount(toneHz, Unit.HZ, 0)),
                byOrder,
                Place.ofFile("harmonics.csv")));
        return this;
    }

    /** An error of times. */
    public MadeSession timing(double sizeMs, SharedBy sharedBy) {
        causes.add(new Cause(
                "timing " + sharedBy,
                sharedBy,
                false,
                Unit.MILLISECOND,
                List.of(new Cause.Size(0, Double.POSITIVE_INFINITY, sizeMs))));
        return this;
    }

    private Conditions named(String conditions) {
        return Bare.conditions(Map.of("session", id, "ear", ear), conditions);
    }

    public Session session() {
        return new Session(
                id,
                "measurements/" + id + ".yaml",
                Optional.of("2026-06-11"),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Resolution.THIRD_OCTAVE),
                Optional.of(Unit.DB_SPL),
                stimuli,
                true,
                true,
                Set.of(),
                new Uncertainty.Declared(causes, false),
                readings,
                traces,
                harmonics,
                List.of(),
                List.of(),
                chain);
    }
}
