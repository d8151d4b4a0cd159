package org.ellwand.measurement;

import java.io.IOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.sound.RecordedPart;
import org.ellwand.sound.RecordedSounds;
import org.ellwand.sound.SyncMark;
import org.ellwand.sound.WavFile;

/** Finds the recordings that a session names, and the parts of them it means. */
final class RecordingFiles {
    static final String TIME = "a time such as '2.5 s'";

    static final String STIMULUS_FILE = "stimulus file";

    /** Whether times count from the sync mark. */
    static final Map<String, Boolean> TIMES_FROM = timesFrom();

    private final DataFiles files;
    private final RecordedSounds sounds;
    private final Found problems;

    RecordingFiles(DataFiles files, RecordedSounds sounds, Found problems) {
        this.files = files;
        this.sounds = sounds;
        this.problems = problems;
    }

    private static Map<String, Boolean> timesFrom() {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put("file", false);
        words.put("sync mark", true);
        return Collections.unmodifiableMap(words);
    }

    /** A part of a recording with the name of its file; empty where something is wrong with it (reported). */
    Optional<Part> part(Keys keys) {
        return part(keys, "file", keys.count("channel"));
    }

    /** The same stretch of the stimulus that was played, in the first channel of its file. */
    Optional<Part> stimulus(Keys keys) {
        return part(keys, STIMULUS_FILE, Optional.of(1));
    }

    private Optional<Part> part(Keys keys, String key, Optional<Integer> channel) {
        Optional<DataFiles.DataFile> file = keys.text(key).flatMap(f -> files.find(f, keys.placeOf(key)));
        Optional<Double> from = seconds(keys, "from");
        Optional<Double> to = seconds(keys, "to");
        boolean marked = keys.choice("times from", TIMES_FROM).orElse(false);
        return file.flatMap(f -> attempt(keys.place(), () -> {
            WavFile wav = WavFile.read(f.path(), f.relative());
            RecordedPart whole = RecordedPart.of(wav, channel, Optional.empty(), Optional.empty());
            double zeroS = marked ? markS(whole) : 0;
            RecordedPart part = RecordedPart.of(
                    wav, channel, from.map(s -> s + zeroS).or(() -> startS(marked, zeroS)), to.map(s -> s + zeroS));
            return new Part(f.relative(), part);
        }));
    }

    private static Optional<Double> startS(boolean marked, double zeroS) {
        return marked ? Optional.of(zeroS) : Optional.empty();
    }

    private double markS(RecordedPart whole) throws IOException, InputException {
        return sounds.markS(whole)
                .orElseThrow(() -> new InputException(
                        Place.ofFile(whole.file().name()),
                        "the sync mark is not heard in the first " + (int) SyncMark.SEARCHED_S
                                + " s; give times of the file instead of 'times from: sync mark'"));
    }

    /**
     * A part that was found.
     *
     * @param file relative to the audited folder
     */
    record Part(String file, RecordedPart samples) {}

    private static Optional<Double> seconds(Keys keys, String key) {
        Optional<Amount> amount = keys.amount(key, unit -> unit.dimension() == Dimension.TIME, TIME);
        return amount.map(a -> a.in(Unit.SECOND));
    }

    /** Something done with a file. */
    @FunctionalInterface
    interface Work<T> {
        T done() throws IOException, InputException;
    }

    /** What came of it; empty where it went wrong (reported). */
    <T> Optional<T> attempt(Place named, Work<T> work) {
        try {
            return Optional.of(work.done());
        } catch (InputException e) {
            e.problems().forEach(problem -> problems.add(problem.place(), problem.text()));
        } catch (IOException e) {
            problems.add(named, "cannot be read: " + e.getMessage());
        }
        return Optional.empty();
    }
}
