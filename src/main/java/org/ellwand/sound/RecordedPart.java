package org.ellwand.sound;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;

/**
 * A stretch of one channel of a recording.
 *
 * @param file of the recording
 * @param channel from 1 on
 * @param firstFrame where it begins
 * @param frames how long it is, from 1 on
 */
public record RecordedPart(WavFile file, int channel, long firstFrame, long frames) {
    /**
     * {@return the whole of one channel}
     *
     * @param file of the recording
     * @param channel from 1 on
     */
    public static RecordedPart whole(WavFile file, int channel) {
        return new RecordedPart(file, channel, 0, file.frames());
    }

    /**
     * The stretch between two times.
     *
     * @param file of the recording
     * @param channel from 1 on; needed where the file has several
     * @param fromS the beginning of the file where there is none
     * @param toS its end where there is none
     * @return the stretch, its ends rounded to samples
     * @throws InputException at the file, where it does not have that
     */
    public static RecordedPart of(WavFile file, Optional<Integer> channel, Optional<Double> fromS, Optional<Double> toS)
            throws InputException {
        if (channel.isEmpty() && file.channels() > 1) {
            throw wrong(file, "has " + file.channels() + " channels; say which one is meant");
        }
        int number = channel.orElse(1);
        if (number < 1 || number > file.channels()) {
            throw wrong(file, "has no channel " + number + "; there are 1 to " + file.channels());
        }
        long from = Math.round(fromS.orElse(0.0) * file.rateHz());
        long to = toS.map(s -> Math.round(s * file.rateHz())).orElse(file.frames());
        if (from < 0 || from >= to || to > file.frames()) {
            throw wrong(
                    file,
                    String.format(
                            Locale.ROOT,
                            "lasts %.3f s; from %.3f s to %.3f s is no part of it",
                            file.durationS(),
                            (double) from / file.rateHz(),
                            (double) to / file.rateHz()));
        }
        return new RecordedPart(file, number, from, to - from);
    }

    private static InputException wrong(WavFile file, String text) {
        return new InputException(Place.ofFile(file.name()), text);
    }

    /**
     * {@return its samples, to be read and closed}
     *
     * @throws IOException where the file cannot be opened
     */
    public SampleReader open() throws IOException {
        return file.open(channel, firstFrame, frames);
    }

    /** {@return how long it lasts, in s} */
    public double durationS() {
        return (double) frames / file.rateHz();
    }

    /** {@return where it begins, in s of the file} */
    public double startS() {
        return (double) firstFrame / file.rateHz();
    }
}
