package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;
import org.ellwand.measurement.Cause;
import org.ellwand.measurement.Chain;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.measurement.Stimulus;
import org.ellwand.measurement.Uncertainty;

/** Sessions of the sample audit. */
final class SampleSessions {
    private SampleSessions() {}

    static List<Session> all() {
        return List.of(
                session("yard-crew-01", new Uncertainty.Declared(causes(), false), readings()),
                session("yard-crew-02", new Uncertainty.Declared(causes(), true), List.of()),
                session("yard-crew-03", new Uncertainty.Unknown(), List.of()));
    }

    private static List<Cause> causes() {
        return List.of(
                new Cause(
                        "calibration",
                        SharedBy.SESSION,
                        false,
                        Unit.DB,
                        List.of(new Cause.Size(0, Double.POSITIVE_INFINITY, 0.5))),
                new Cause(
                        "tube placement",
                        SharedBy.INSERTION,
                        true,
                        Unit.DB,
                        List.of(
                                new Cause.Size(0, 3000, 0.4),
                                new Cause.Size(3000, 6000, 1),
                                new Cause.Size(6000, Double.POSITIVE_INFINITY, 2.5))));
    }

    private static List<CurveReading> readings() {
        List<CurveReading> readings = new ArrayList<>();
        readings.add(reading(Map.of("device", Reading.OPEN_EAR, "ear", "left", "stimulus", "pink-94")));
        for (String ear : List.of("left", "right")) {
            for (String insertion : List.of("1", "2", "3")) {
                readings.add(reading(Map.of(
                        "device",
                        "Skerry Tide",
                        "ear",
                        ear,
                        "setting",
                        "flood",
                        "stimulus",
                        "pink-94",
                        "insertion",
                        insertion)));
            }
        }
        return readings;
    }

    private static CurveReading reading(Map<String, String> conditions) {
        Map<String, String> all = new TreeMap<>(conditions);
        all.put("session", "yard-crew-01");
        return new CurveReading(
                Conditions.of(all),
                Reading.Values.LEVELS,
                Spectrum.of(Resolution.OCTAVE, Map.of(1000.0, 80.0)),
                Place.ofFile("measurements/yard-crew-01.csv"));
    }

    private static Session session(String id, Uncertainty uncertainty, List<CurveReading> readings) {
        Stimulus pink = new Stimulus(
                "pink-94",
                "pink noise",
                List.of(new Amount(94, Unit.DB_SPL, 0)),
                Optional.of(new Amount(106, Unit.DB_SPL, 0)));
        return new Session(
                id,
                "measurements/" + id + ".yaml",
                Optional.of("2026-06-11"),
                Optional.of("Probe-tube microphone in the ear canal (invented)"),
                Optional.of("Treated room"),
                Optional.of(Resolution.OCTAVE),
                Optional.of(Unit.DB_SPL),
                Map.of("pink-94", pink),
                false,
                true,
                Set.of(),
                uncertainty,
                readings,
                List.of(),
                List.of(),
                List.of(),
                List.of("measurements/" + id + ".csv"),
                Chain.UNSTATED);
    }
}
