package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.ellwand.acoustics.Bound;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Contribution;
import org.ellwand.audit.Point;
import org.ellwand.measurement.Conditions;

/** Cells of the sample audit; all numbers are invented. */
final class SampleCells {
    static final List<Double> BANDS = List.of(125.0, 250.0, 500.0, 1000.0, 2000.0, 4000.0, 8000.0);
    private static final double[] SHAPE = {-2.2, -1.0, 0.1, 0.8, 1.9, 1.3, -0.9};

    private SampleCells() {}

    /** A cell with a curve around a mean, in dB, and three insertions. */
    static CellResult curve(String ear, String stimulus, double meanDb, double u, double probability) {
        List<Point> bands = new ArrayList<>();
        List<List<Double>> insertions = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (int i = 0; i < SHAPE.length; i++) {
            double value = meanDb + SHAPE[i];
            bands.add(point(OptionalDouble.of(BANDS.get(i)), value, 1.1, 0.97));
            for (int insertion = 0; insertion < 3; insertion++) {
                insertions.get(insertion).add(value + (insertion - 1) * 1.3 + 0.2 * ((i + insertion) % 3 - 1));
            }
        }
        return new CellResult(
                conditions(ear, stimulus),
                3,
                meanDb,
                Bound.MEASURED,
                OptionalDouble.of(u),
                OptionalDouble.of(probability),
                bands,
                List.of(),
                List.of(),
                insertions,
                List.of(
                        new Contribution("insertion", "yard-crew-01/1", 0.4),
                        new Contribution("insertion", "yard-crew-01/2", 0.3),
                        new Contribution("reading", "yard-crew-01/1/pink-94", 0.2)));
    }

    /** A cell that is a number and nothing else. */
    static CellResult number(Map<String, String> conditions, double value, double u, double probability) {
        return new CellResult(
                Conditions.of(new TreeMap<>(conditions)),
                1,
                value,
                Bound.MEASURED,
                OptionalDouble.of(u),
                OptionalDouble.of(probability),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new Contribution("as declared", "figure", u)));
    }

    static Point point(OptionalDouble hz, double value, double u, double probability) {
        return new Point(
                hz,
                OptionalDouble.empty(),
                value,
                OptionalDouble.of(u),
                OptionalDouble.of(value - 1.96 * u),
                OptionalDouble.of(value + 1.96 * u),
                OptionalDouble.of(probability),
                Bound.MEASURED);
    }

    private static Conditions conditions(String ear, String stimulus) {
        return Conditions.of(Map.of(
                "session",
                "yard-crew-01",
                "ear",
                ear,
                "setting",
                "flood",
                "stimulus",
                stimulus,
                "device",
                "Skerry Tide"));
    }
}
