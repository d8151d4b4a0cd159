package org.ellwand.quantity;

import java.util.Arrays;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;

/**
 * The mean of single numbers: takes first, then insertions.
 *
 * @param factor from the unit of the numbers to that of the limit
 */
record NumberFormula(Cell cell, double factor) implements Formula {
    @Override
    public Computation computation(Task task, ReadingIndex index) {
        return new Mean(index);
    }

    @Override
    public List<Band> having(List<Band> bands, Resolution resolution) {
        return List.of();
    }

    @Override
    public List<Band> anyBands(Resolution resolution) {
        return List.of();
    }

    private final class Mean implements Computation {
        private final int[][] positions;

        Mean(ReadingIndex index) {
            positions = cell.insertions().stream()
                    .map(Insertion::takes)
                    .map(takes -> takes.stream().mapToInt(index::of).toArray())
                    .toArray(int[][]::new);
        }

        @Override
        public int size() {
            return 1;
        }

        @Override
        public boolean isLinear() {
            return true;
        }

        @Override
        public List<Integer> readings() {
            return Arrays.stream(positions)
                    .flatMapToInt(Arrays::stream)
                    .distinct()
                    .sorted()
                    .boxed()
                    .toList();
        }

        @Override
        public void compute(double[][] numbers, double[] out) {
            double sum = 0;
            for (int[] takes : positions) {
                for (int take : takes) {
                    sum += numbers[take][0] / (takes.length * positions.length);
                }
            }
            out[0] = factor * sum;
        }
    }
}
