package org.ellwand.audit;

import java.util.Locale;
import org.ellwand.statistics.Scatter;

/**
 * Errors known from few observations only: per draw, one χ of {@code degreesOfFreedom} and one normal per column, the
 * error of point p being √(ν/χ²) · Σ z_i · effects[p][i] (JCGM 101:2008, 6.4.9; one combination for all points).
 */
final class Group {
    private final String key;
    private final int degreesOfFreedom;
    private final double[][] effects;

    Group(String key, int degreesOfFreedom, double[][] effects) {
        this.key = key;
        this.degreesOfFreedom = degreesOfFreedom;
        this.effects = effects;
    }

    String key() {
        return key;
    }

    /** What was observed, as reports print it: insertions, heads, units or open-ear takes. */
    String label() {
        return key.substring(0, key.indexOf('|')).toLowerCase(Locale.ROOT);
    }

    int degreesOfFreedom() {
        return degreesOfFreedom;
    }

    int columns() {
        return effects.length == 0 ? 0 : effects[0].length;
    }

    double effect(int point, int column) {
        return effects[point][column];
    }

    Scatter scatter(int point) {
        double square = 0;
        for (double effect : effects[point]) {
            square += effect * effect;
        }
        return new Scatter(degreesOfFreedom, Math.sqrt(square));
    }
}
