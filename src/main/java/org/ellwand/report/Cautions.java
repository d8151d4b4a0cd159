package org.ellwand.report;

import java.util.List;
import org.ellwand.measurement.Session;

/**
 * What every report says about its own reach. Printed always: a reader may take any worn product for protection, and a
 * template cannot leave half of it out.
 */
final class Cautions {
    private Cautions() {}

    static List<String> of(Counted counted, List<Session> sessions) {
        return List.of(
                "Measured on " + Phrases.count(counted.ears(), "ear", "ears") + " with "
                        + Phrases.count(counted.insertions(), "insertion", "insertions")
                        + ". The numbers describe these ears and these samples; other ears will differ.",
                "This is not a rating. A rating needs the standard procedure and a qualified laboratory.",
                impulses(sessions),
                "For exposure to noise at work, local law and a hearing professional decide. Do not choose protective"
                        + " equipment by this report.",
                "Ringing or dull hearing after noise: leave the noise and see a hearing professional.");
    }

    private static String impulses(List<Session> sessions) {
        boolean some = sessions.stream()
                .flatMap(session -> session.stimuli().values().stream())
                .anyMatch(stimulus -> stimulus.kind().contains("impulse"));
        return some
                ? "Impulse noise was measured only under the stimuli listed here; nothing is said of other impulses."
                : "Impulse noise was not measured. Nothing here says what shots, blows or explosions do to the ear.";
    }
}
