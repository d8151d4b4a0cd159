package org.ellwand.report;

import java.nio.file.Path;
import java.util.Optional;

/**
 * How a report is wanted.
 *
 * @param userTemplates folder whose files stand in for the built-in templates of the same name; absent: built-in only
 * @param dated the date to print; absent: none, so that the same inputs give the same bytes
 * @param png whether every figure comes as a PNG too
 */
public record ReportOptions(Optional<Path> userTemplates, Optional<String> dated, boolean png) {
    /** Built-in templates, no date, no PNG. */
    public static ReportOptions plain() {
        return new ReportOptions(Optional.empty(), Optional.empty(), false);
    }
}
