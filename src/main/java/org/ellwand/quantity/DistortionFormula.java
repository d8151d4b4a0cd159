package org.ellwand.quantity;

import java.util.Arrays;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.HarmonicDistortion;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.HarmonicReading;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;

/**
 * The distortion of the mean levels of a cell's harmonics, in dB: takes first, then insertions.
 *
 * @param orders the harmonics that are summed; every reading has them, and the fundamental
 */
record DistortionFormula(Cell cell, List<Integer> orders) implements Formula {
    private static final int FUNDAMENTAL = 1;

    DistortionFormula {
        orders = List.copyOf(orders);
    }

    @Override
    public Computation computation(Task task, ReadingIndex index) {
        return new Sum(index);
    }

    @Override
    public List<Band> having(List<Band> bands, Resolution resolution) {
        return List.of();
    }

    @Override
    public List<Band> anyBands(Resolution resolution) {
        return List.of();
    }

    static HarmonicReading harmonics(Reading reading) {
        if (reading instanceof HarmonicReading harmonics) {
            return harmonics;
        }
        throw new IllegalArgumentException("no harmonics: " + reading.conditions());
    }

    private final class Sum implements Computation {
        private final int[] positions;
        private final double[] weights;
        private final int[] fundamental;
        private final int[][] summed;
        private final double[] levelsDb = new double[orders.size()];

        Sum(ReadingIndex index) {
            List<List<Reading>> groups =
                    cell.insertions().stream().map(Insertion::takes).toList();
            List<Reading> readings = groups.stream().flatMap(List::stream).toList();
            positions = readings.stream().mapToInt(index::of).toArray();
            weights = groups.stream()
                    .flatMapToDouble(g -> g.stream().mapToDouble(r -> 1.0 / (g.size() * groups.size())))
                    .toArray();
            fundamental = readings.stream().mapToInt(r -> place(r, FUNDAMENTAL)).toArray();
            summed = readings.stream()
                    .map(r -> orders.stream().mapToInt(o -> place(r, o)).toArray())
                    .toArray(int[][]::new);
        }

        private int place(Reading reading, int order) {
            return harmonics(reading).orders().indexOf(order);
        }

        @Override
        public int size() {
            return 1;
        }

        @Override
        public boolean isLinear() {
            return false;
        }

        @Override
        public void compute(double[][] numbersDb, double[] out) {
            double fundamentalDb = 0;
            Arrays.fill(levelsDb, 0);
            for (int r = 0; r < positions.length; r++) {
                double[] numbers = numbersDb[positions[r]];
                fundamentalDb += weights[r] * numbers[fundamental[r]];
                for (int o = 0; o < levelsDb.length; o++) {
                    levelsDb[o] += weights[r] * numbers[summed[r][o]];
                }
            }
            out[0] = HarmonicDistortion.percent(fundamentalDb, levelsDb);
        }
    }
}
