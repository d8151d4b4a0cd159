package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;

/**
 * Joint draws of the errors of a subject's points, block by block, taken as linear in the readings' errors. Every factor
 * and every group has a stream of its own, seeded from its key, so that subjects and claims that share a cause share its
 * draws.
 */
final class Draws {
    private final Estimates estimates;
    private final int[] moving;
    private final List<NormalStream> factorStreams = new ArrayList<>();
    private final List<GroupStream> groupStreams = new ArrayList<>();
    private final double[] z;

    Draws(Estimates estimates, int block) {
        this(estimates, block, new double[block]);
    }

    /** @param z scratch of one block, which draws that are asked for in turn may share */
    Draws(Estimates estimates, int block, double[] z) {
        this.estimates = estimates;
        this.z = z;
        moving = estimates.effect.moving();
        List<Factor> factors = estimates.factors();
        for (int f : moving) {
            factorStreams.add(new NormalStream(Seeds.of(factors.get(f).key())));
        }
        estimates.groups.forEach(g -> groupStreams.add(new GroupStream(g, block)));
    }

    /** Sets {@code errors[p][0 … count)} to the next draws of point p. */
    void next(double[][] errors, int count) {
        for (double[] point : errors) {
            Arrays.fill(point, 0, count, 0);
        }
        for (int f = 0; f < factorStreams.size(); f++) {
            factorStreams.get(f).fill(z, count);
            for (int p = 0; p < errors.length; p++) {
                double effect = estimates.effect.at(p, moving[f]);
                if (effect != 0) {
                    addScaled(errors[p], effect, count);
                }
            }
        }
        groupStreams.forEach(g -> g.addTo(errors, count));
    }

    private void addScaled(double[] target, double effect, int count) {
        for (int t = 0; t < count; t++) {
            target[t] += effect * z[t];
        }
    }

    /** The draws of one group: a χ and a normal per column. */
    static final class GroupStream {
        private final Group group;
        private final List<NormalStream> columns = new ArrayList<>();
        private final List<NormalStream> squares = new ArrayList<>();
        private final double[] scale;
        private final double[] z;

        GroupStream(Group group, int block) {
            this.group = group;
            for (int c = 0; c < group.columns(); c++) {
                columns.add(new NormalStream(Seeds.of(group.key(), "column", Integer.toString(c))));
            }
            for (int d = 0; d < group.degreesOfFreedom(); d++) {
                squares.add(new NormalStream(Seeds.of(group.key(), "chi", Integer.toString(d))));
            }
            scale = new double[block];
            z = new double[block];
        }

        void addTo(double[][] errors, int count) {
            drawScale(count);
            for (int c = 0; c < columns.size(); c++) {
                columns.get(c).fill(z, count);
                for (int p = 0; p < errors.length; p++) {
                    double effect = group.effect(p, c);
                    for (int t = 0; effect != 0 && t < count; t++) {
                        errors[p][t] += effect * scale[t] * z[t];
                    }
                }
            }
        }

        private void drawScale(int count) {
            Arrays.fill(scale, 0, count, 0);
            for (NormalStream square : squares) {
                square.fill(z, count);
                for (int t = 0; t < count; t++) {
                    scale[t] += z[t] * z[t];
                }
            }
            for (int t = 0; t < count; t++) {
                scale[t] = Math.sqrt(squares.size() / scale[t]);
            }
        }
    }
}
