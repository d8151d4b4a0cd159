package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
    private final double[][] levelsDb;
    private final double[][] perturbed;
    private final boolean[] active;
    private final double[][] errors;
    private final double[][] linear;

    /**
     * @param levelsDb unperturbed levels of all readings
     * @param trials how many draws
     */
    Simulation(Estimates estimates, double[][] levelsDb, int trials) {
        this.estimates = estimates;
        this.computation = estimates.computation;
        this.levelsDb = levelsDb;
        this.perturbed = Arrays.stream(levelsDb).map(double[]::clone).toArray(double[][]::new);
        this.active = active();
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
        estimates.factors.forEach(f -> streams.add(new NormalStream(Seeds.of(f.key()))));
        List<Draws.GroupStream> groups = estimates.groups.stream()
                .map(g -> new Draws.GroupStream(g, BLOCK))
                .toList();
        double[][] z = new double[streams.size()][BLOCK];
        double[][] grouped = new double[estimates.size()][BLOCK];
        for (int start = 0; start < trials; start += BLOCK) {
            int count = Math.min(BLOCK, trials - start);
            for (int f = 0; f < z.length; f++) {
                if (active[f]) {
                    streams.get(f).fill(z[f], count);
                }
            }
            for (double[] point : grouped) {
                Arrays.fill(point, 0);
            }
            groups.forEach(g -> g.addTo(grouped, count));
            block(z, grouped, start, count);
        }
    }

    private void block(double[][] z, double[][] grouped, int start, int count) {
        double[] out = new double[estimates.size()];
        for (int t = 0; t < count; t++) {
            perturb(z, t);
            computation.compute(perturbed, out);
            for (int p = 0; p < out.length; p++) {
                double replaced = 0;
                double sum = 0;
                for (int f = 0; f < z.length; f++) {
                    if (active[f]) {
                        sum += estimates.effect[p][f] * z[f][t];
                        replaced += (estimates.declaredEffect[p][f] - estimates.effect[p][f]) * z[f][t];
                    }
                }
                errors[p][start + t] = out[p] - estimates.value[p] + grouped[p][t] - replaced;
                linear[p][start + t] = sum + grouped[p][t];
            }
        }
    }

    private void perturb(double[][] z, int t) {
        for (int f = 0; f < z.length; f++) {
            if (active[f]) {
                for (Factor.Entry entry : estimates.factors.get(f).entries()) {
                    perturbed[entry.reading()][entry.band()] = levelsDb[entry.reading()][entry.band()];
                }
            }
        }
        for (int f = 0; f < z.length; f++) {
            if (active[f]) {
                for (Factor.Entry entry : estimates.factors.get(f).entries()) {
                    perturbed[entry.reading()][entry.band()] += entry.sizeDb() * z[f][t];
                }
            }
        }
    }

    /** A factor is drawn where at least one point still depends on it. */
    private boolean[] active() {
        boolean[] drawn = new boolean[estimates.factors.size()];
        for (int f = 0; f < drawn.length; f++) {
            for (int p = 0; p < estimates.size(); p++) {
                drawn[f] |= estimates.effect[p][f] != 0;
            }
        }
        return drawn;
    }
}
