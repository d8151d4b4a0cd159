package org.ellwand.plan;

import java.util.List;
import org.ellwand.amount.Interval;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.ObservedDeviation;
import org.ellwand.statistics.Scatter;

/**
 * How often a further sitting decides, if the true value is what was measured so far: its own value then scatters about
 * that one with its standard uncertainty u, and it decides where the value lies far enough from the ends of the limit.
 *
 * <p>For one end at a distance d this is Φ(d/u − z), z of the confidence; solved for u it is the usual sample size for
 * showing a mean beyond a limit, n = (z + z_power)² s² / d². Declared errors are taken as normal and their size as known. Where
 * their size is seen in the repeats themselves, the judge's margin is t s / √n with the s of that sitting: for one end the chance is then
 * P(T ≥ t) of the noncentral t with n − 1 degrees of freedom and d √n / σ, the power of the t test. The deciding point is taken as the only
 * one that matters; where many points are judged, a fail needs more than z.
 *
 * @param confidence of the decision
 * @param beyond how many u a value must lie beyond an end to fail the claim
 */
record Chance(Interval limit, double confidence, double beyond) {
    private static final int HALVINGS = 40;

    /** Of a claim that is judged by one number. */
    static Chance ofOne(Interval limit, double confidence) {
        return new Chance(limit, confidence, NormalErrors.z(confidence));
    }

    /**
     * Of a claim that is judged by several, which share out the error of a wrong fail.
     *
     * @param points how many
     */
    static Chance ofSeveral(Interval limit, double confidence, int points) {
        return new Chance(limit, confidence, NormalErrors.z(1 - (1 - confidence) / points));
    }

    /**
     * With what a fail was seen to need, where that is less: numbers that err together share less of the error.
     *
     * @param value that was judged a fail, or inside the limit
     * @param probability with which the judge took the limit to hold of it
     */
    Chance seen(double value, double probability) {
        double distance = -NormalErrors.z(probability);
        boolean tells = !limit.contains(value) && distance < beyond;
        return tells ? new Chance(limit, confidence, Math.max(distance, NormalErrors.z(confidence))) : this;
    }

    /**
     * With what was seen not to be enough for a fail, where that is more.
     *
     * @param value that was judged marginal
     * @param probability with which the judge took the limit to hold of it
     */
    Chance unseen(double value, double probability) {
        double distance = -NormalErrors.z(probability);
        boolean tells = !limit.contains(value) && distance > beyond;
        return tells ? new Chance(limit, confidence, distance) : this;
    }

    /** The probability that a sitting of standard uncertainty {@code u} passes or fails the claim. */
    double firm(double truth, double u) {
        return u == 0 ? 1 : firm(truth, u, new NormalErrors(u));
    }

    /**
     * The same of a mean of repeats whose scatter is known from these repeats alone.
     *
     * @param known standard uncertainty besides, of known size
     * @param scatter standard deviation of one repeat
     * @param repeats at least two
     */
    double firm(double truth, double known, double scatter, int repeats) {
        double ofMean = scatter / Math.sqrt(repeats);
        if (ofMean == 0) {
            return firm(truth, known);
        }
        double deviation = Math.hypot(known, ofMean);
        return ObservedDeviation.mean(
                repeats - 1,
                ratio -> firm(
                        truth, deviation, new MixedErrors(known, List.of(new Scatter(repeats - 1, ratio * ofMean)))));
    }

    /**
     * @param deviation of the value from the truth
     * @param judged the errors that the judge takes it to have
     */
    private double firm(double truth, double deviation, Errors judged) {
        double far = -judged.quantile(NormalErrors.phi(-beyond));
        double below = limit.hasLower() ? NormalErrors.phi((limit.lower() - far - truth) / deviation) : 0;
        double above = limit.hasUpper() ? NormalErrors.phi((truth - limit.upper() - far) / deviation) : 0;
        return passes(truth, deviation, judged) + below + above;
    }

    /** How small u must be for a value to be told from the nearer end of the limit. */
    double neededU(double value) {
        return distance(value) / (limit.contains(value) ? NormalErrors.z(confidence) : beyond);
    }

    private double distance(double value) {
        return Math.min(
                limit.hasLower() ? Math.abs(value - limit.lower()) : Double.POSITIVE_INFINITY,
                limit.hasUpper() ? Math.abs(value - limit.upper()) : Double.POSITIVE_INFINITY);
    }

    private double passes(double truth, double deviation, Errors judged) {
        double margin = -judged.quantile(1 - confidence);
        if (!limit.hasUpper()) {
            return NormalErrors.phi((truth - limit.lower() - margin) / deviation);
        }
        if (!limit.hasLower()) {
            return NormalErrors.phi((limit.upper() - margin - truth) / deviation);
        }
        double off = truth - (limit.lower() + limit.upper()) / 2;
        double reach = reach((limit.upper() - limit.lower()) / 2, judged);
        return reach < 0
                ? 0
                : NormalErrors.phi((reach - off) / deviation) - NormalErrors.phi((-reach - off) / deviation);
    }

    /** How far from the middle of a limit a value may lie and still pass; negative where none does. */
    private double reach(double half, Errors judged) {
        if (inside(half, 0, judged) < confidence) {
            return -1;
        }
        double low = 0;
        double high = half;
        for (int i = 0; i < HALVINGS; i++) {
            double mid = (low + high) / 2;
            if (inside(half, mid, judged) >= confidence) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return low;
    }

    /** The probability that the true value lies within ± half, the measured one lying off the middle by some distance. */
    private static double inside(double half, double off, Errors errors) {
        return errors.atMost(half - off) - errors.atMost(-half - off);
    }

    /** Half the width of the narrowest limit about the same middle that a value would pass. */
    double tolerance(double value, Errors errors) {
        double off = Math.abs(value - (limit.lower() + limit.upper()) / 2);
        double low = off;
        double high = off - errors.quantile((1 - confidence) / 2);
        for (int i = 0; i < HALVINGS; i++) {
            double mid = (low + high) / 2;
            if (inside(mid, off, errors) >= confidence) {
                high = mid;
            } else {
                low = mid;
            }
        }
        return high;
    }

    /**
     * How many must be tested, with none outside, to say that a share of all lies inside: ln(1 − C) / ln(p), rounded up.
     *
     * @param share between 0 and 1
     */
    static int noneOutside(double share, double confidence) {
        return (int) Math.ceil(Math.log(1 - confidence) / Math.log(share) - 1e-9);
    }
}
