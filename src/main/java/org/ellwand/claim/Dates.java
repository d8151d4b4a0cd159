package org.ellwand.claim;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ellwand.amount.PhraseException;

/** Dates as claims files write them (ISO 8601): a day, a month or a year. */
final class Dates {
    private static final Pattern DATE = Pattern.compile("(\\d{4})(?:-(\\d{2})(?:-(\\d{2}))?)?");

    private Dates() {}

    static String date(String text) throws PhraseException {
        Matcher matcher = DATE.matcher(text);
        if (!matcher.matches() || !exists(matcher)) {
            throw new PhraseException("'" + text + "' is not a date: accepted are 2026-05-04, 2026-05, 2026");
        }
        return text;
    }

    /** A day. */
    static LocalDate day(String text) throws PhraseException {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new PhraseException("'" + text + "' is not a day: accepted are days as 2026-05-04");
        }
    }

    /** Of a month or a year the first; {@code text} has been read as a date. */
    static LocalDate firstDay(String text) {
        return LocalDate.parse((text + "-01-01").substring(0, "2026-01-01".length()));
    }

    private static boolean exists(Matcher matcher) {
        try {
            LocalDate.of(number(matcher, 1), number(matcher, 2), number(matcher, 3));
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }

    private static int number(Matcher matcher, int group) {
        String digits = matcher.group(group);
        return digits == null ? 1 : Integer.parseInt(digits);
    }
}
