package org.ellwand.measurement;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ellwand.input.Place;

/** Asks how settings were switched, once two of them carry the same insertion id. */
final class SwitchCheck {
    /** Conditions within which an insertion id means one and the same insertion. */
    private static final Set<String> WITHIN =
            Set.of(ConditionNames.DEVICE, "head", "ear", "side", "unit", "fit", ConditionNames.INSERTION);

    private final Place place;
    private final Found problems;

    SwitchCheck(Place place, Found problems) {
        this.place = place;
        this.problems = problems;
    }

    void check(List<CurveReading> readings) {
        Map<Conditions, String> settingOf = new HashMap<>();
        for (Reading reading : readings) {
            boolean telling = reading.isInPlace()
                    && reading.conditions()
                            .names()
                            .containsAll(Set.of(ConditionNames.INSERTION, ConditionNames.SETTING));
            if (telling && isSecondSetting(reading, settingOf)) {
                return;
            }
        }
    }

    private boolean isSecondSetting(Reading reading, Map<Conditions, String> settingOf) {
        Conditions within = reading.conditions().only(WITHIN);
        String setting = reading.get(ConditionNames.SETTING).orElse("");
        String first = settingOf.putIfAbsent(within, setting);
        if (first == null || first.equals(setting)) {
            return false;
        }
        problems.add(
                place,
                "'settings switched' is missing: settings '" + first + "' and '" + setting
                        + "' both carry the insertion '"
                        + within.get(ConditionNames.INSERTION).orElse("")
                        + "'; write 'in place' if the product stayed in the ear, else 'between insertions'");
        return true;
    }
}
