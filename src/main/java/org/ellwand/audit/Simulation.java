package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ellwand.quantity.Computation;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;

/**
 * The plain Monte Carlo of JCGM 101:2008: in every trial the readings are perturbed by the draws of all factors and the
 * judged numbers computed anew. Needed where a number is not linear in the readings.
 *
 * <p>Sums of energies are inflated by independent noise: a draw is on average above the value by as much as the value is
 * above the truth, so the draws are moved by −2 · (mean of the draws − value).
 */
final class Simulation {
    private static final int BLOCK = 1000;

    private final Estimates estimates;
    private final Computation computation;
    private final double[][] levelsDb;
    private final double[][] full;
    private final int trials;

    /**
     * @param levelsDb unperturbed levels of all readings
     */
    Simulation(Estimates estimates, double[][] levelsDb, int trials) {
        this.estimates = estimates;
        this.computation = estimates.computation;
        this.levelsDb = levelsDb;
        this.full = estimates.declaredEffect;
        this.trials = trials;
    }

    /** Errors of every point, trial by trial, as drawn. */
    double[][] errors() {
        double[][] errors = new double[estimates.size()][trials];
        List<NormalStream> streams = new ArrayList<>();
        estimates.factors.forEach(f -> streams.add(new NormalStream(Seeds.of(f.key()))));
        List<Draws.GroupStream> groups = estimates.groups.stream()
                .map(g -> new Draws.GroupStream(g, BLOCK))
                .toList();
        double[][] z = new double[streams.size()][BLOCK];
        double[][] groupErrors = new double[estimates.size()][BLOCK];
        for (int start = 0; start < trials; start += BLOCK) {
            int count = Math.min(BLOCK, trials - start);
            for (int f = 0; f < z.length; f++) {
                streams.get(f).fill(z[f], count);
            }
            for (double[] point : groupErrors) {
                Arrays.fill(point, 0);
            }
            groups.forEach(g -> g.addTo(groupErrors, count));
            block(z, groupErrors, errors, start, count);
        }
        return errors;
    }

    private void block(double[][] z, double[][] groupErrors, double[][] errors, int start, int count) {
        double[][] perturbed = new double[levelsDb.length][];
        double[] out = new double[estimates.size()];
        boolean[] active = active();
        for (int t = 0; t < count; t++) {
            for (int r = 0; r < levelsDb.length; r++) {
                perturbed[r] = levelsDb[r].clone();
            }
            for (int f = 0; f < z.length; f++) {
                if (active[f]) {
                    for (Factor.Entry entry : estimates.factors.get(f).entries()) {
                        perturbed[entry.reading()][entry.band()] += entry.sizeDb() * z[f][t];
                    }
                }
            }
            computation.compute(perturbed, out);
            for (int p = 0; p < out.length; p++) {
                errors[p][start + t] = out[p] - estimates.value[p] + groupErrors[p][t] - replaced(z, active, p, t);
            }
        }
    }

    /** A factor is drawn where at least one point still depends on it. */
    private boolean[] active() {
        boolean[] active = new boolean[estimates.factors.size()];
        for (int f = 0; f < active.length; f++) {
            for (int p = 0; p < estimates.size(); p++) {
                active[f] |= estimates.effect[p][f] != 0;
            }
        }
        return active;
    }

    /** What drawn factors gave a point at which observed scatter stands in their place. */
    private double replaced(double[][] z, boolean[] active, int p, int t) {
        double sum = 0;
        for (int f = 0; f < z.length && estimates.observed[p]; f++) {
            if (active[f]) {
                sum += (full[p][f] - estimates.effect[p][f]) * z[f][t];
            }
        }
        return sum;
    }
}
