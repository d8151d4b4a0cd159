package org.ellwand.measurement;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bands;
import org.ellwand.acoustics.Resolution;
import org.ellwand.words.Figures;

/**
 * The bands of one resolution.
 *
 * @param hzPerUnit 1 where the column is in Hz, 1000 where it is in kHz
 */
record FrequencyAxis(Resolution resolution, double hzPerUnit) implements Axis {
    private static final String IN_KILOHERTZ = "; if it is in kHz, the header says so, as 'frequency (kHz)'";
    private static final MathContext SIX_DIGITS = new MathContext(6);

    @Override
    public String column() {
        return "frequency";
    }

    @Override
    public Optional<Integer> position(double number) {
        return Bands.read(resolution, number * hzPerUnit).map(Band::index);
    }

    @Override
    public String expected(double number) {
        String nearest = Bands.nearestTwo(resolution, number * hzPerUnit).stream()
                .sorted()
                .map(band -> Figures.frequency(band.nominalHz()))
                .collect(Collectors.joining(" and "));
        return Figures.frequency(rounded(number * hzPerUnit)) + " fits no " + resolution.text()
                + " band within 2 %; the nearest are " + nearest + (isInKilohertz(number) ? IN_KILOHERTZ : "");
    }

    private boolean isInKilohertz(double number) {
        return hzPerUnit == 1 && Bands.read(resolution, number * 1000).isPresent();
    }

    @Override
    public String name(int position) {
        return Figures.frequency(new Band(resolution, position).nominalHz());
    }

    /** 4.1 kHz is 4100 Hz also where the product of the two binary numbers is not. */
    private static double rounded(double hz) {
        return new BigDecimal(hz).round(SIX_DIGITS).doubleValue();
    }
}
