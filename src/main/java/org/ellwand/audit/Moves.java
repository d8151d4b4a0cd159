package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Which factors move which readings, looked up by reading: a subject of a lot has few of them. */
final class Moves {
    private final List<Factor> factors;
    private final List<List<Move>> byReading = new ArrayList<>();

    private record Move(int factor, Factor.Entry entry) {}

    /** @param readings how many there are */
    Moves(List<Factor> factors, int readings) {
        this.factors = factors;
        for (int r = 0; r < readings; r++) {
            byReading.add(new ArrayList<>());
        }
        for (int f = 0; f < factors.size(); f++) {
            for (Factor.Entry entry : factors.get(f).entries()) {
                byReading.get(entry.reading()).add(new Move(f, entry));
            }
        }
    }

    /**
     * The factors that move some readings, in their order, as far as they do.
     *
     * @param readings positions, ascending
     */
    List<Factor> of(List<Integer> readings) {
        if (readings.size() == byReading.size()) {
            return factors;
        }
        TreeMap<Integer, List<Factor.Entry>> found = new TreeMap<>();
        for (int reading : readings) {
            for (Move move : byReading.get(reading)) {
                found.computeIfAbsent(move.factor(), f -> new ArrayList<>(1)).add(move.entry());
            }
        }
        List<Factor> own = new ArrayList<>(found.size());
        found.forEach((factor, entries) -> own.add(factors.get(factor).with(entries)));
        return own;
    }
}
