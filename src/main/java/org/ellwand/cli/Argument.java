package org.ellwand.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.TypeConversionException;

/** Words of the command line that are more than text. Each says what it takes and what stands there instead. */
final class Argument {
    private Argument() {}

    /** A file or folder. An empty word is mostly a variable of a script that is not set, and would mean the folder one is in. */
    static Path path(String word) {
        if (word.isEmpty()) {
            throw new TypeConversionException("a file or folder, not ''");
        }
        try {
            return Path.of(word);
        } catch (InvalidPathException e) {
            throw new TypeConversionException(
                    "a name in the letters of this locale, not '" + word + "' (under LC_ALL=C.UTF-8 it may be any)");
        }
    }

    static int wholeNumber(String word) {
        try {
            return Integer.parseInt(word);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("a whole number, not '" + word + "'");
        }
    }

    static double number(String word) {
        try {
            return Double.parseDouble(word);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("a number, not '" + word + "'");
        }
    }
}
