package org.ellwand.plan;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Stimulus;

/**
 * One reading to be taken.
 *
 * @param conditions besides those of the sitting: setting, fit, …; {@code device} only where it is no product
 * @param insertion absent with the open ear and at the field microphone
 * @param take absent with the product in place
 */
record PlannedReading(
        SortedMap<String, String> conditions, Stimulus stimulus, Optional<Integer> insertion, Optional<Integer> take) {
    static PlannedReading openEar(Stimulus stimulus, int take) {
        return new PlannedReading(
                new TreeMap<>(Map.of("device", Reading.OPEN_EAR)), stimulus, Optional.empty(), Optional.of(take));
    }

    static PlannedReading field(Stimulus stimulus) {
        return new PlannedReading(
                new TreeMap<>(Map.of("device", Reading.FIELD_MICROPHONE)),
                stimulus,
                Optional.empty(),
                Optional.empty());
    }

    boolean isOpenEar() {
        return Reading.OPEN_EAR.equals(conditions.get("device"));
    }

    /** What a sheet says under a column. */
    String cell(String column) {
        return switch (column) {
            case "stimulus" -> stimulus.id();
            case "insertion" -> insertion.map(String::valueOf).orElse("");
            case "take" -> take.map(String::valueOf).orElse("");
            default -> conditions.getOrDefault(column, "");
        };
    }
}
