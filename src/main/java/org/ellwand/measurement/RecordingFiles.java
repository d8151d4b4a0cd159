package org.ellwand.measurement;

import java.io.IOException;
import java.util.Optional;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.sound.RecordedPart;
import org.ellwand.sound.WavFile;

/** Finds the recordings that a session names, and the parts of them it means. */
final class RecordingFiles {
    static final String TIME = "a time such as '2.5 s'";

    private final DataFiles files;
    private final Found problems;

    RecordingFiles(DataFiles files, Found problems) {
        this.files = files;
        this.problems = problems;
    }

    /** A part of a recording with the name of its file; empty where something is wrong with it (reported). */
    Optional<Part> part(Keys keys) {
        Optional<DataFiles.DataFile> file = keys.text("file").flatMap(f -> files.find(f, keys.placeOf("file")));
        Optional<Integer> channel = keys.count("channel");
        Optional<Double> from = seconds(keys, "from");
        Optional<Double> to = seconds(keys, "to");
        return file.flatMap(f -> attempt(keys.place(), () -> {
            WavFile wav = WavFile.read(f.path(), f.relative());
            return new Part(f.relative(), RecordedPart.of(wav, channel, from, to));
        }));
    }

    /** @param file relative to the audited folder */
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
