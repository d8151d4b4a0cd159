package org.ellwand.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Work on one block, dealt out to the processors: the longest pieces first, each to the lane with the least to do. */
final class Lanes {
    private final List<List<Runnable>> lanes = new ArrayList<>();

    /** @param costS about how long it takes */
    record Piece(double costS, Runnable work) {}

    Lanes(List<Piece> pieces, int count) {
        double[] loads = new double[count];
        for (int lane = 0; lane < count; lane++) {
            lanes.add(new ArrayList<>());
        }
        pieces.stream()
                .sorted(Comparator.comparingDouble(Piece::costS).reversed())
                .forEach(piece -> {
                    int lane = IntStream.range(0, count)
                            .boxed()
                            .min(Comparator.comparingDouble(i -> loads[i]))
                            .orElseThrow();
                    loads[lane] += piece.costS();
                    lanes.get(lane).add(piece.work());
                });
    }

    /** Runs all pieces; those of different lanes beside each other. Each piece touches what is its own only. */
    void run() {
        IntStream.range(0, lanes.size())
                .parallel()
                .forEach(lane -> lanes.get(lane).forEach(Runnable::run));
    }
}
