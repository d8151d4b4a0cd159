package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RectangularCholeskyDecomposition;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;

/**
 * Joint draws of the errors of a few numbers, taken as linear in the readings' errors: as many normals as the numbers
 * have independent directions, instead of one for every factor. The distribution is the same; the draws are this
 * subject's own.
 */
final class JointDraws {
    private static final double NOTHING = 1e-14;

    private final Estimates estimates;

    JointDraws(Estimates estimates) {
        this.estimates = estimates;
    }

    /** Errors by number and trial. */
    double[][] errors(int trials) {
        double[][] errors = new double[estimates.size()][trials];
        if (estimates.effect.factors() > 0) {
            addNormal(errors, trials);
        }
        estimates.groups.forEach(group -> new Draws.GroupStream(group, trials).addTo(errors, trials));
        return errors;
    }

    private void addNormal(double[][] errors, int trials) {
        RealMatrix effect = MatrixUtils.createRealMatrix(estimates.effect.dense());
        RealMatrix covariance = effect.multiply(effect.transpose());
        double largest = 0;
        for (int p = 0; p < errors.length; p++) {
            largest = Math.max(largest, covariance.getEntry(p, p));
        }
        if (largest == 0) {
            return;
        }
        RealMatrix root = new RectangularCholeskyDecomposition(covariance, NOTHING * largest).getRootMatrix();
        double[] z = new double[trials];
        for (int c = 0; c < root.getColumnDimension(); c++) {
            new NormalStream(Seeds.of("joint", identity(), Integer.toString(c))).fill(z, trials);
            for (int p = 0; p < errors.length; p++) {
                double factor = root.getEntry(p, c);
                for (int t = 0; factor != 0 && t < trials; t++) {
                    errors[p][t] += factor * z[t];
                }
            }
        }
    }

    /** The same for the same readings, whatever else is judged. */
    private String identity() {
        List<String> keys = new ArrayList<>();
        estimates.factors().forEach(factor -> keys.add(factor.key()));
        return String.join("\n", keys);
    }
}
