package org.ellwand.measurement;

import java.util.Optional;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;

/**
 * One number that was derived from what was measured.
 *
 * @param conditions everything known of it
 * @param number in the unit of the quantity that derived it
 * @param movedBy unit of the causes that move it
 * @param place where it was read off
 */
public record NumberReading(Conditions conditions, double number, Optional<Unit> movedBy, Place place)
        implements Reading {
    /** A time does not depend on a frequency. */
    private static final double ANY_HZ = 1000;

    @Override
    public Values values() {
        return Values.NUMBER;
    }

    @Override
    public double[] numbers() {
        return new double[] {number};
    }

    @Override
    public double nominalHz(int ignored) {
        return ANY_HZ;
    }
}
