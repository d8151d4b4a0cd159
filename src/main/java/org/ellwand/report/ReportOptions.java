package org.ellwand.report;

import java.util.Optional;

/**
 * How a report is wanted.
 *
 * @param dated the date to print; absent: none, so that the same inputs give the same bytes
 * @param png whether every figure comes as a PNG too
 */
public record ReportOptions(Optional<String> dated, boolean png) {
    /** {@return no date, no PNG} */
    public static ReportOptions plain() {
        return new ReportOptions(Optional.empty(), false);
    }
}
