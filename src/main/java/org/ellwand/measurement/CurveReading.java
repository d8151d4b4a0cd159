package org.ellwand.measurement;

import java.util.Optional;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;

/**
 * One measured curve.
 *
 * @param spectrum the numbers by band, in dB
 * @param place its first row, or the header of its column
 */
public record CurveReading(Conditions conditions, Values values, Spectrum spectrum, Place place) implements Reading {
    /** A reading that is known to be a curve. */
    public static CurveReading of(Reading reading) {
        if (reading instanceof CurveReading curve) {
            return curve;
        }
        throw new IllegalArgumentException("no curve: " + reading.conditions());
    }

    @Override
    public double[] numbers() {
        return spectrum.levelsDb();
    }

    @Override
    public double nominalHz(int number) {
        return spectrum.bandList().get(number).nominalHz();
    }

    @Override
    public Optional<Unit> movedBy() {
        return Optional.of(Unit.DB);
    }
}
