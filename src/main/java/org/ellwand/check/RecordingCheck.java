package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.measurement.RecordedNote;
import org.ellwand.measurement.Session;

/**
 * What the samples of recordings say: a sound that was cut off, samples that were lost, an offset, a length too short for the
 * lowest bands, a calibration tone that is not steady or not at its frequency, a tone of which harmonics
 * are read that does not last or is not the strongest. The thresholds stand at
 * {@code org.ellwand.sound.RecordingNotes}. Cut or lost samples and a wrong calibrator spoil levels by an unknown amount. Where a
 * session has no recordings nothing is missing. Compares samples with each other, and so is never wrong about sound sessions.
 */
final class RecordingCheck implements DataCheck {
    @Override
    public String name() {
        return "recording";
    }

    @Override
    public String needs() {
        return "'recordings' in the session";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        List<Finding> findings = new ArrayList<>();
        for (RecordedNote recorded : session.chain().recorded()) {
            findings.add(new Finding(
                    name(),
                    session.id(),
                    Sheets.name(recorded.conditions()),
                    List.of(),
                    recorded.note().of(recorded.file()),
                    Errs.EITHER,
                    recorded.note().kind().spoils() ? Consequence.UNUSABLE : Consequence.NOTED));
        }
        return new Checked(true, findings);
    }
}
