package org.ellwand.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.sound.RecordedPart;
import org.ellwand.sound.SoundSheets;
import org.ellwand.sound.SyncMark;
import org.ellwand.sound.Transfer;
import org.ellwand.sound.WavFile;

/** Holds a recording against the stimulus that was played. */
final class StimulusComparison {
    private StimulusComparison() {}

    /**
     * When the sync mark begins, in s of a file.
     *
     * @throws InputException where it is not heard
     */
    static double markS(WavFile file, Optional<Integer> channel) throws IOException, InputException {
        int searched = RecordedPart.of(file, channel, Optional.empty(), Optional.empty())
                .channel();
        long frame = SyncMark.find(file, searched)
                .orElseThrow(() -> new InputException(
                        Place.ofFile(file.name()),
                        "the sync mark is not heard in the first " + (int) SyncMark.SEARCHED_S + " s"));
        return (double) frame / file.rateHz();
    }

    /** Says how far the recording lags behind and whether it follows; writes gain and coherence where that is asked for. */
    static void say(RecordedPart played, RecordedPart heard, Transfer compared, Optional<Path> sheet, PrintWriter err)
            throws IOException, InputException {
        err.println(String.format(
                Locale.ROOT,
                "%s: %.3f ms behind %s after the sync mark",
                heard.file().name(),
                1000 * compared.delayS(),
                played.file().name()));
        if (compared.drift() != 0) {
            err.println(String.format(
                    Locale.ROOT,
                    "%s: its clock and that of %s differ by %.1f millionths; the drift was taken off",
                    heard.file().name(),
                    played.file().name(),
                    1e6 * Math.abs(compared.drift())));
        }
        compared.note()
                .ifPresent(note -> err.println(note.of(heard.file().name()).text()));
        if (sheet.isPresent()) {
            try (NewFile file = new NewFile(sheet.get())) {
                file.write(SoundSheets.transfer(compared).getBytes(StandardCharsets.UTF_8));
                file.keep();
            }
            err.println("gain and coherence written to " + sheet.get());
        }
        err.flush();
    }
}
