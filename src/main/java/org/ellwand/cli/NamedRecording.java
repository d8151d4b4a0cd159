package org.ellwand.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.sound.WavFile;

/** A recording that was named on the command line: that it is not there is a slip of whoever named it. */
final class NamedRecording {
    private NamedRecording() {}

    static WavFile read(Path path) throws IOException, InputException {
        if (!Files.exists(path)) {
            throw new InputException(Place.ofFile(path.toString()), "no such file");
        }
        if (Files.isDirectory(path)) {
            throw new InputException(Place.ofFile(path.toString()), "is a folder; a recording is a file");
        }
        if (!Files.isReadable(path)) {
            throw new InputException(Place.ofFile(path.toString()), "cannot be read: no permission");
        }
        return WavFile.read(path, path.toString());
    }
}
