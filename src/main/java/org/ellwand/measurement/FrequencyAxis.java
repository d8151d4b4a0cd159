package org.ellwand.measurement;

import java.util.Optional;
import java.util.stream.Collectors;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bands;
import org.ellwand.acoustics.Resolution;

/**
 * The bands of one resolution.
 *
 * @param hzPerUnit 1 where the column is in Hz, 1000 where it is in kHz
 */
record FrequencyAxis(Resolution resolution, double hzPerUnit) implements Axis {
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
                .map(FrequencyText::of)
                .collect(Collectors.joining(" and "));
        return FrequencyText.of(number * hzPerUnit) + " fits no " + resolution.text()
                + " band within 2 %; the nearest are " + nearest;
    }

    @Override
    public String name(int position) {
        return FrequencyText.of(new Band(resolution, position));
    }
}
