package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.input.YamlNode;

/** Reads {@code stimuli}. */
final class StimulusReader {
    static final List<String> KEYS = List.of("kind", "level", "peak");
    private static final String LEVEL = "a level with its weighting, in dB SPL, dB(A) or dB(C)";

    private StimulusReader() {}

    static Map<String, Stimulus> read(Keys session) {
        Map<String, Stimulus> stimuli = new LinkedHashMap<>();
        session.mapping("stimuli").ifPresent(keys -> {
            for (YamlNode.Entry entry : keys.mapping().entries()) {
                Keys.of(entry.value(), "the stimulus '" + entry.key() + "'", keys.problems())
                        .ifPresent(stimulus -> stimuli.put(entry.key(), stimulus(entry.key(), stimulus)));
            }
        });
        return Collections.unmodifiableMap(stimuli);
    }

    private static Stimulus stimulus(String id, Keys keys) {
        keys.onlyKnown("a stimulus", KEYS);
        keys.need("kind", "say what sound it is: pink noise, music, quiet, …");
        String kind = keys.text("kind").orElse("");
        if (kind.equalsIgnoreCase(Stimulus.QUIET) && !kind.equals(Stimulus.QUIET)) {
            keys.problems().add(keys.placeOf("kind"), "'kind: " + kind + "' is written 'quiet'");
        }
        if (!kind.equals(Stimulus.QUIET)) {
            keys.need("level", "give " + LEVEL);
        }
        return new Stimulus(id, kind, levels(keys), keys.amount("peak", Unit::isLevel, LEVEL));
    }

    private static List<Amount> levels(Keys keys) {
        List<Amount> levels = new ArrayList<>();
        Set<Unit> weightings = EnumSet.noneOf(Unit.class);
        for (YamlNode node : keys.list("level")) {
            Optional<Amount> level = keys.amount("level", node, Unit::isLevel, LEVEL);
            level.ifPresent(levels::add);
            if (level.isPresent() && !weightings.add(level.get().unit())) {
                keys.problems()
                        .add(node.place(), "two levels in " + level.get().unit().symbol() + "; one is wanted");
            }
        }
        return List.copyOf(levels);
    }
}
