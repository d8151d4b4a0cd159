package org.ellwand.measurement;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;

/**
 * The background of a reading, and what was done about it.
 *
 * <p>A level L' = 10 lg (10^(L/10) − 10^(A/10)), A the background's, moves with both: dL' = (dL − q dA)/(1 − q), q =
 * 10^(−(L − A)/10). So the errors of the reading grow by 1/(1 − q), and those of the background come in with q/(1 − q).
 *
 * @param readings in quiet that the background is the mean of; at least one
 * @param backgroundDb level of the background in each band that they all have
 * @param shares q in each band where the background was subtracted; in no other was the level changed for it
 */
public record Subtracted(List<CurveReading> readings, Map<Band, Double> backgroundDb, Map<Band, Double> shares) {
    /**
     * Keeps copies, lowest band first.
     *
     * @param readings in quiet that the background is the mean of
     * @param backgroundDb level of the background in each band that they all have
     * @param shares q in each band where the background was subtracted
     */
    public Subtracted {
        readings = List.copyOf(readings);
        backgroundDb = Collections.unmodifiableMap(new TreeMap<>(backgroundDb));
        shares = Collections.unmodifiableMap(new TreeMap<>(shares));
    }

    /** How much the errors of the reading grow in a band. */
    double growth(Band band) {
        return 1 / (1 - shares.getOrDefault(band, 0.0));
    }

    /**
     * {@return how much of an error of the background comes in, in a band; 0 where nothing was subtracted}
     *
     * @param band of the reading
     */
    public double entering(Band band) {
        double q = shares.getOrDefault(band, 0.0);
        return q / (1 - q);
    }
}
