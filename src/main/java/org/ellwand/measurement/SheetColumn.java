package org.ellwand.measurement;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ellwand.amount.Unit;

/**
 * One header cell.
 *
 * @param header as written
 * @param name without a known unit in brackets: {@code flood 65 (1)} keeps its bracket, {@code level (dB SPL)} does not
 * @param unit the known unit, in any case
 * @param index 0-based
 */
record SheetColumn(String header, String name, Optional<Unit> unit, int index) {
    static SheetColumn of(String header, int index) {
        for (int open = 0; open < header.length(); open++) {
            Optional<Unit> unit = unitFrom(header, open);
            if (unit.isPresent()) {
                return new SheetColumn(header, header.substring(0, open).strip(), unit, index);
            }
        }
        return new SheetColumn(header, header, Optional.empty(), index);
    }

    private static Optional<Unit> unitFrom(String header, int open) {
        char bracket = header.charAt(open);
        char closing = bracket == '(' ? ')' : ']';
        boolean bracketed = (bracket == '(' || bracket == '[') && header.charAt(header.length() - 1) == closing;
        return bracketed && header.length() > open + 1
                ? unit(header.substring(open + 1, header.length() - 1).strip())
                : Optional.empty();
    }

    private static Optional<Unit> unit(String text) {
        Optional<Unit> exact = Unit.spelled(text);
        return exact.isPresent() ? exact : unitInAnyCase(text.replaceAll("\\s+", " "));
    }

    /** {@code HZ}, {@code db spl}: headers come in capitals too. */
    private static Optional<Unit> unitInAnyCase(String text) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit != Unit.NONE)
                .filter(unit -> unit.spellings().stream().anyMatch(text::equalsIgnoreCase))
                .findFirst();
    }

    /** The name as columns are compared: in small letters, spaces collapsed. */
    String key() {
        return key(name);
    }

    static String key(String text) {
        return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    boolean isBlank() {
        return header.isEmpty();
    }

    /** Whether the header is this name with something in brackets that is no known unit. */
    boolean isWithUnknownUnit(String wanted) {
        return unit.isEmpty() && key().matches(Pattern.quote(wanted) + " ?[(\\[].*[)\\]]");
    }
}
