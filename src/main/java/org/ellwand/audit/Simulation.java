package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.quantity.Computation;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;

/**
 * The plain Monte Carlo of JCGM 101:2008: in every trial the readings are perturbed by the draws of all factors and the
 * judged numbers computed anew. Needed where a number is not linear in the readings. Beside every error stands what it
 * would be were the number linear; that one's distribution is known.
 */
final class Simulation {
    private static final int BLOCK = 500;

    private final Estimates estimates;
    private final Computation computation;
    private final List<Factor> factors;
    private final double[][] perturbed;
    /** A factor is drawn where at least one point still depends on it. */
    private final int[] moving;

    private final Slot[] slots;
    private final double[][] errors;
    private final double[][] linear;

    /**
     * @param levelsDb unperturbed levels of all readings
     * @param trials how many draws
     */
    Simulation(Estimates estimates, double[][] levelsDb, int trials) {
        this.estimates = estimates;
        this.computation = estimates.computation;
        this.factors = estimates.factors();
        this.perturbed = levelsDb.clone();
        this.moving = estimates.effect.moving();
        this.slots = slots().toArray(Slot[]::new);
        for (Slot slot : slots) {
            perturbed[slot.reading] = levelsDb[slot.reading].clone();
        }
        this.errors = new double[estimates.size()][trials];
        this.linear = new double[estimates.size()][trials];
        run(trials);
    }

    /** Errors by point and trial, as drawn. */
    double[][] errors() {
        return errors;
    }

    /** Errors by point and trial, were the numbers linear in the readings. */
    double[][] linear() {
        return linear;
    }

    private void run(int trials) {
        List<NormalStream> streams = new ArrayList<>();
        for (int f : moving) {
            streams.add(new NormalStream(Seeds.of(factors.get(f).key())));
        }
        List<Draws.GroupStream> groups = estimates.groups.stream()
                .map(g -> new Draws.GroupStream(g, BLOCK))
                .toList();
        double[][] z = new double[streams.size()][BLOCK];
        double[][] grouped = new double[estimates.size()][BLOCK];
        for (int start = 0; start < trials; start += BLOCK) {
            int count = Math.min(BLOCK, trials - start);
            for (int f = 0; f < z.length; f++) {
                streams.get(f).fill(z[f], count);
            }
            for (double[] point : grouped) {
                Arrays.fill(point, 0);
            }
            groups.forEach(g -> g.addTo(grouped, count));
            block(z, grouped, start, count);
        }
    }

    private void block(double[][] z, double[][] grouped, int start, int count) {
        linearErrors(z, grouped, start, count);
        shifts(z, count);
        double[] out = new double[estimates.size()];
        for (int t = 0; t < count; t++) {
            trial(t, start + t, out);
        }
    }

    /** A method of its own: the machine compiles it sooner and once, where it would the whole block again and again. */
    private void trial(int inBlock, int trial, double[] out) {
        for (Slot slot : slots) {
            perturbed[slot.reading][slot.band] = slot.levelDb + slot.errorDb[inBlock];
        }
        computation.compute(perturbed, out);
        for (int p = 0; p < out.length; p++) {
            errors[p][trial] += out[p] - estimates.value[p];
        }
    }

    /** Sets the linear errors, and what of the nonlinear ones is linear: groups, less what observed scatter replaced. */
    private void linearErrors(double[][] z, double[][] grouped, int start, int count) {
        for (int p = 0; p < errors.length; p++) {
            System.arraycopy(grouped[p], 0, errors[p], start, count);
            System.arraycopy(grouped[p], 0, linear[p], start, count);
            for (int f = 0; f < z.length; f++) {
                double effect = estimates.effect.at(p, moving[f]);
                addScaled(linear[p], start, z[f], effect, count);
                addScaled(errors[p], start, z[f], effect - estimates.declaredEffect.at(p, moving[f]), count);
            }
        }
    }

    private static void addScaled(double[] target, int start, double[] z, double factor, int count) {
        for (int t = 0; factor != 0 && t < count; t++) {
            target[start + t] += factor * z[t];
        }
    }

    private void shifts(double[][] z, int count) {
        for (Slot slot : slots) {
            Arrays.fill(slot.errorDb, 0, count, 0);
            for (int i = 0; i < slot.factors.length; i++) {
                addScaled(slot.errorDb, 0, z[slot.factors[i]], slot.sizesDb[i], count);
            }
        }
    }

    /** A number of a reading, the draws that move it, and how far they do in a block of trials. */
    private static final class Slot {
        private final int reading;
        private final int band;
        private final double levelDb;
        private final int[] factors;
        private final double[] sizesDb;
        private final double[] errorDb = new double[BLOCK];

        Slot(int reading, int band, double levelDb, List<Integer> factors, List<Double> sizesDb) {
            this.reading = reading;
            this.band = band;
            this.levelDb = levelDb;
            this.factors = factors.stream().mapToInt(i -> i).toArray();
            this.sizesDb = sizesDb.stream().mapToDouble(d -> d).toArray();
        }
    }

    private record Moved(int reading, int band) {}

    private List<Slot> slots() {
        Map<Moved, List<Integer>> drawn = new LinkedHashMap<>();
        Map<Moved, List<Double>> sizes = new LinkedHashMap<>();
        for (int f = 0; f < moving.length; f++) {
            Entries entries = factors.get(moving[f]).entries();
            for (int e = 0; e < entries.size(); e++) {
                Moved number = new Moved(entries.reading(e), entries.band(e));
                drawn.computeIfAbsent(number, n -> new ArrayList<>()).add(f);
                sizes.computeIfAbsent(number, n -> new ArrayList<>()).add(entries.sizeDb(e));
            }
        }
        List<Slot> slots = new ArrayList<>();
        drawn.forEach((n, factors) -> slots.add(new Slot(
                n.reading(), n.band(), perturbed[n.reading()][n.band()], factors, sizes.getOrDefault(n, List.of()))));
        return slots;
    }
}
