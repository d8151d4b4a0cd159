package org.ellwand.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.acoustics.Exposure;
import org.ellwand.measurement.Stimulus;

/**
 * What a list of readings gives an ear without protection: levels in the field, as the rules take them. At the eardrum
 * they read 5 to 10 dB(A) higher (from memory), which the rules have allowed for.
 *
 * @param sounds what is heard, each for the duration of a reading
 * @param seconds duration of a reading
 */
record EarExposure(List<Stimulus> sounds, double seconds) {
    EarExposure {
        sounds = sounds.stream().filter(sound -> !sound.isQuiet()).toList();
    }

    /** In % of what a rule allows in a day; doses of several levels add up. */
    double dosePercent(Exposure rule) {
        return sounds.stream()
                .mapToDouble(sound -> rule.dosePercent(Loudness.fieldDb(sound), seconds))
                .sum();
    }

    double loudestDb() {
        return sounds.stream().mapToDouble(Loudness::fieldDb).max().orElse(0);
    }

    Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("readings", sounds.size());
        model.put("minutes", Text.number(sounds.size() * seconds / 60, 1));
        model.put("loudest", Text.number(loudestDb(), 0));
        model.put("niosh", percent(dosePercent(Exposure.NIOSH)));
        model.put("upperAction", percent(dosePercent(Exposure.EU_UPPER_ACTION)));
        return model;
    }

    private static String percent(double dose) {
        return dose < 0.1 ? "< 0.1 %" : Text.number(dose, dose < 10 ? 1 : 0) + " %";
    }
}
