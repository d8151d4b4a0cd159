package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Conditions;

/** Refuses a rule under which readings of several settings, fits, firmwares, ears or units match, unsaid. */
final class Unsaid {
    private static final List<String> MUST_BE_NAMED = List.of("setting", "fit", "firmware");

    private Unsaid() {}

    static void refuse(Rule rule, List<Conditions> matched) throws InputException {
        refuseNames(rule, matched);
        refusePopulation(rule, matched);
    }

    /** Refuses several settings, fits or firmwares; ears and units may be many. */
    static void refuseNames(Rule rule, List<Conditions> matched) throws InputException {
        for (String name : MUST_BE_NAMED) {
            SortedSet<String> values = values(matched, name);
            if (values.size() > 1 && !rule.where().containsKey(name) && !compares(rule, name)) {
                throw new InputException(
                        rule.place(),
                        "readings of several values of '" + name + "' match (" + String.join(", ", values)
                                + "): name one, a list, or 'all', so that new data never change a verdict silently");
            }
        }
    }

    private static void refusePopulation(Rule rule, List<Conditions> matched) throws InputException {
        SortedSet<String> wearers = new TreeSet<>();
        matched.forEach(c -> wearers.add(wearer(rule, c)));
        if (wearers.size() > 1 && rule.ears().isEmpty()) {
            throw new InputException(
                    rule.place(),
                    "readings of more than one ear match (" + String.join(", ", wearers)
                            + "): say 'ears: each' or 'ears: mean', or name an ear");
        }
        SortedSet<String> units = values(matched, "unit");
        if (units.size() > 1 && rule.units().isEmpty() && !compares(rule, "unit")) {
            throw new InputException(
                    rule.place(),
                    "readings of more than one unit match (" + String.join(", ", units)
                            + "): say 'units: each' or 'units: mean', or name a unit");
        }
    }

    private static String wearer(Rule rule, Conditions conditions) {
        List<String> names =
                compares(rule, "ear") || compares(rule, "side") ? List.of("head") : List.of("head", "ear", "side");
        List<String> parts = new ArrayList<>();
        names.forEach(name -> conditions.get(name).ifPresent(parts::add));
        return parts.isEmpty() ? "(no ear named)" : String.join(" ", parts);
    }

    private static boolean compares(Rule rule, String condition) {
        return rule.between().filter(b -> b.condition().equals(condition)).isPresent();
    }

    private static SortedSet<String> values(List<Conditions> matched, String name) {
        SortedSet<String> values = new TreeSet<>();
        matched.forEach(c -> values.add(c.get(name).orElse("(none)")));
        return values;
    }
}
