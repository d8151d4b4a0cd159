package org.ellwand.pairing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.amount.Interval;
import org.ellwand.claim.Choice;
import org.ellwand.claim.LevelChoice;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;

/**
 * Which readings a rule, or one side of its comparison, speaks of.
 *
 * @param device name of the product
 * @param where names of conditions and what is accepted of each
 * @param stimulus kind of the stimulus; absent: any but quiet
 * @param level absent: not restricted
 */
record Filter(String device, Map<String, Choice> where, Optional<String> stimulus, Optional<LevelChoice> level) {

    static Filter of(Rule rule, String product) {
        return new Filter(product, rule.where(), rule.stimulus(), rule.level());
    }

    /** This filter for one value of a compared condition. */
    Filter with(String condition, String value, Optional<Interval> levelValue) {
        return switch (condition) {
            case "device" -> new Filter(value, where, stimulus, level);
            case "stimulus" -> new Filter(device, where, Optional.of(value), level);
            case "level" -> new Filter(device, where, stimulus, levelValue.map(LevelChoice.Range::new));
            default -> {
                Map<String, Choice> more = new LinkedHashMap<>(where);
                more.put(condition, new Choice.OneOf(List.of(value)));
                yield new Filter(device, more, stimulus, level);
            }
        };
    }

    /** This filter for what was measured in quiet. */
    Filter quiet() {
        return new Filter(device, where, Optional.of(Stimulus.QUIET), Optional.empty());
    }

    /** This filter for what was measured under any other sound. */
    Filter sounding() {
        return new Filter(device, where, stimulus.filter(kind -> !kind.equals(Stimulus.QUIET)), level);
    }

    boolean meets(Session session, Conditions conditions) {
        return meetsDevice(conditions) && meetsNames(conditions) && meetsStimulus(session.stimulusOf(conditions));
    }

    boolean meetsDevice(Conditions conditions) {
        return conditions.has("device", device);
    }

    boolean meetsNames(Conditions conditions) {
        for (Map.Entry<String, Choice> asked : where.entrySet()) {
            Choice choice = asked.getValue();
            if (!(choice instanceof Choice.All)
                    && conditions.get(asked.getKey()).filter(choice::accepts).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** Readings in quiet enter only where the rule speaks of quiet. */
    boolean meetsStimulus(Optional<Stimulus> given) {
        if (given.isEmpty()) {
            return stimulus.isEmpty()
                    && level.filter(LevelChoice.Range.class::isInstance).isEmpty();
        }
        boolean kind =
                stimulus.map(given.get().kind()::equals).orElse(!given.get().isQuiet());
        return kind && level.map(l -> isAt(l, given.get())).orElse(true);
    }

    /** Levels of different weightings never match each other. */
    private static boolean isAt(LevelChoice choice, Stimulus stimulus) {
        if (choice instanceof LevelChoice.Range range) {
            Interval level = range.level();
            return stimulus.levelIn(level.unit()).filter(level::contains).isPresent();
        }
        return true;
    }
}
