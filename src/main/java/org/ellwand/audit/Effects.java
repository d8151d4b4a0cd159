package org.ellwand.audit;

import java.util.Arrays;

/**
 * What one standard deviation of every factor adds to every point, those that add nothing left out: of a lot's many factors
 * few move a point.
 */
final class Effects {
    private final int factors;
    private final int[][] columns;
    private final double[][] values;

    private Effects(int factors, int[][] columns, double[][] values) {
        this.factors = factors;
        this.columns = columns;
        this.values = values;
    }

    /** The effects of a factor, by point. */
    interface Source {
        double[] of(int factor);
    }

    /** Says which effects stay. */
    interface Choice {
        boolean keeps(int point, int factor);
    }

    static Effects of(int points, int factors, Source source) {
        int[][] columns = new int[points][8];
        double[][] values = new double[points][8];
        int[] counts = new int[points];
        for (int f = 0; f < factors; f++) {
            double[] effects = source.of(f);
            for (int p = 0; p < points; p++) {
                if (effects[p] != 0) {
                    if (counts[p] == columns[p].length) {
                        columns[p] = Arrays.copyOf(columns[p], 2 * counts[p]);
                        values[p] = Arrays.copyOf(values[p], 2 * counts[p]);
                    }
                    columns[p][counts[p]] = f;
                    values[p][counts[p]++] = effects[p];
                }
            }
        }
        for (int p = 0; p < points; p++) {
            columns[p] = Arrays.copyOf(columns[p], counts[p]);
            values[p] = Arrays.copyOf(values[p], counts[p]);
        }
        return new Effects(factors, columns, values);
    }

    /** These effects, as far as they are chosen. */
    Effects only(Choice choice) {
        int[][] fewer = new int[columns.length][];
        double[][] left = new double[columns.length][];
        for (int p = 0; p < columns.length; p++) {
            int point = p;
            int[] kept = Arrays.stream(columns[p])
                    .filter(f -> choice.keeps(point, f))
                    .toArray();
            fewer[p] = kept;
            left[p] = Arrays.stream(kept).mapToDouble(f -> at(point, f)).toArray();
        }
        return new Effects(factors, fewer, left);
    }

    /** How many factors there are. */
    int factors() {
        return factors;
    }

    double at(int point, int factor) {
        int found = Arrays.binarySearch(columns[point], factor);
        return found < 0 ? 0 : values[point][found];
    }

    /** The factors that move a point, in their order. */
    int[] moving(int point) {
        return columns[point];
    }

    /** What they add to it, in the same order; not to be changed. */
    double[] sizes(int point) {
        return values[point];
    }

    /** The factors that move any point, in their order. */
    int[] moving() {
        return Arrays.stream(columns)
                .flatMapToInt(Arrays::stream)
                .distinct()
                .sorted()
                .toArray();
    }

    /** Root of the sum of the squares at a point. */
    double deviation(int point) {
        double square = 0;
        for (double e : values[point]) {
            square += e * e;
        }
        return Math.sqrt(square);
    }

    /** By point and factor. */
    double[][] dense() {
        double[][] dense = new double[columns.length][factors];
        for (int p = 0; p < columns.length; p++) {
            for (int i = 0; i < columns[p].length; i++) {
                dense[p][columns[p][i]] = values[p][i];
            }
        }
        return dense;
    }
}
