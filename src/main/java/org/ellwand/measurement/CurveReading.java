package org.ellwand.measurement;

import java.util.Optional;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;

/**
 * One measured curve.
 *
 * @param conditions everything known of it
 * @param values what the numbers are
 * @param spectrum the numbers by band, in dB
 * @param place its first row, or the header of its column
 * @param subtracted its background, where that was measured and looked at
 */
public record CurveReading(
        Conditions conditions, Values values, Spectrum spectrum, Place place, Optional<Subtracted> subtracted)
        implements Reading {
    /**
     * A reading as it was read.
     *
     * @param conditions everything known of it
     * @param values what the numbers are
     * @param spectrum the numbers by band, in dB
     * @param place its first row, or the header of its column
     */
    public CurveReading(Conditions conditions, Values values, Spectrum spectrum, Place place) {
        this(conditions, values, spectrum, place, Optional.empty());
    }

    /**
     * {@return this reading with other levels, and what was done about its background}
     *
     * @param levels in dB by band
     * @param background what was looked at, and where it was subtracted
     */
    public CurveReading with(Spectrum levels, Subtracted background) {
        return new CurveReading(conditions, values, levels, place, Optional.of(background));
    }

    /**
     * {@return a reading that is known to be a curve, as one}
     *
     * @param reading any reading
     * @throws IllegalArgumentException where it is no curve
     */
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
    public int size() {
        return spectrum.bandList().size();
    }

    @Override
    public double nominalHz(int number) {
        return spectrum.bandList().get(number).nominalHz();
    }

    @Override
    public double growth(int number) {
        return subtracted.map(s -> s.growth(spectrum.bandList().get(number))).orElse(1.0);
    }

    @Override
    public Optional<Unit> movedBy() {
        return Optional.of(Unit.DB);
    }
}
