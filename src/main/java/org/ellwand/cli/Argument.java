package org.ellwand.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Words of the command line that are more than text. Each says what it takes and what stands there instead.
 *
 * <p>The converters are classes and no lambdas: with lambdas in their place Java 17.0.15 crashed when the build had it write
 * the archive of classes.
 */
final class Argument {
    private Argument() {}

    static void register(CommandLine line) {
        line.registerConverter(Path.class, new OfPath())
                .registerConverter(int.class, new OfWholeNumber())
                .registerConverter(Integer.class, new OfWholeNumber())
                .registerConverter(double.class, new OfNumber());
    }

    /** A file or folder. An empty word is mostly a variable of a script that is not set, and would mean the folder one is in. */
    private static final class OfPath implements ITypeConverter<Path> {
        @Override
        public Path convert(String word) {
            if (word.isEmpty()) {
                throw new TypeConversionException("a file or folder, not ''");
            }
            try {
                return Path.of(word);
            } catch (InvalidPathException e) {
                throw new TypeConversionException("a name in the letters of this locale, not '" + word
                        + "' (under LC_ALL=C.UTF-8 it may be any)");
            }
        }
    }

    private static final class OfWholeNumber implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String word) {
            try {
                return Integer.valueOf(word);
            } catch (NumberFormatException e) {
                throw new TypeConversionException("a whole number, not '" + word + "'");
            }
        }
    }

    private static final class OfNumber implements ITypeConverter<Double> {
        @Override
        public Double convert(String word) {
            try {
                return Double.valueOf(word);
            } catch (NumberFormatException e) {
                throw new TypeConversionException("a number, not '" + word + "'");
            }
        }
    }
}
