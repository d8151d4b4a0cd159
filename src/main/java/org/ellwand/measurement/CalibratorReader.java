package org.ellwand.measurement;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.sound.Calibration;
import org.ellwand.sound.RecordedSounds;
import org.ellwand.sound.RecordingNotes;

/** Reads {@code calibrator}: the recorded tone that gives the recordings of a session their level. */
final class CalibratorReader {
    static final List<String> KEYS = List.of("file", "channel", "level", "frequency");
    private static final double USUAL_HZ = 1000;

    private final String session;
    private final RecordingFiles files;
    private final RecordedSounds sounds;
    private final List<RecordedNote> notes;

    CalibratorReader(String session, RecordingFiles files, RecordedSounds sounds, List<RecordedNote> notes) {
        this.session = session;
        this.files = files;
        this.sounds = sounds;
        this.notes = notes;
    }

    /** The calibration; empty where there is none, or something is wrong with it (reported). */
    Optional<Calibration> read(Keys keys, List<String> dataFiles) {
        keys.onlyKnown("a calibrator", KEYS);
        keys.need("file", "name the recording of the calibrator");
        keys.need("level", "give the calibrator's level, as '94 dB SPL'");
        Optional<Amount> level =
                keys.amount("level", unit -> unit == Unit.DB_SPL, "a level without weighting, as '94 dB SPL'");
        double hz = keys.amount("frequency", u -> u.dimension() == Dimension.FREQUENCY, "a frequency in Hz or kHz")
                .map(amount -> amount.in(Unit.HZ))
                .orElse(USUAL_HZ);
        Optional<RecordingFiles.Part> part = files.part(keys);
        part.ifPresent(p -> dataFiles.add(p.file()));
        if (level.isEmpty() || part.isEmpty()) {
            return Optional.empty();
        }
        Optional<Calibration> calibration = files.attempt(
                keys.place(),
                () -> sounds.calibration(part.get().samples(), level.get().value()));
        calibration.ifPresent(c -> RecordingNotes.of(
                        c, hz, part.get().samples().file().format())
                .forEach(note -> notes.add(new RecordedNote(
                        Conditions.of(Map.of("session", session)), part.get().file(), note))));
        return calibration;
    }
}
