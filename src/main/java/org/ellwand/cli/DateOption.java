package org.ellwand.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** An option that takes a day. */
final class DateOption {
    private DateOption() {}

    /** @throws ParameterException if the text is no day as ISO 8601 writes it */
    static void check(CommandSpec spec, String option, Optional<String> text) {
        if (text.isPresent()) {
            try {
                LocalDate.parse(text.get());
            } catch (DateTimeParseException e) {
                throw new ParameterException(
                        spec.commandLine(), option + " takes a date as 2026-09-01, not '" + text.get() + "'");
            }
        }
    }
}
