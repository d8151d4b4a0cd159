package org.ellwand.measurement;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Chain.Calibration;

/** Reads {@code calibration}, {@code averaging}, {@code overload} and what is said of the product. */
final class ChainReader {
    static final List<String> CALIBRATION_KEYS = List.of("before", "after", "dated");
    static final Map<String, Boolean> YES_NO =
            Collections.unmodifiableMap(new TreeMap<>(Map.of("yes", true, "no", false)));
    private static final String LEVEL = "a level such as '94.0 dB SPL'";

    private ChainReader() {}

    static Chain read(Keys session) {
        Optional<Calibration> calibration = session.mapping("calibration").map(ChainReader::calibration);
        Optional<Amount> averaging =
                session.amount("averaging", unit -> unit.dimension() == Dimension.TIME, "a time such as '10 s'");
        if (averaging.isPresent() && !(averaging.get().value() > 0)) {
            session.problems().add(session.placeOf("averaging"), "a time of averaging is longer than nothing");
        }
        return new Chain(
                calibration,
                averaging,
                session.amount("overload", Unit::isLevel, LEVEL),
                weakestFirst(session),
                session.choice("open by design", YES_NO).orElse(false),
                List.of());
    }

    private static List<String> weakestFirst(Keys session) {
        List<String> settings = session.texts("settings weakest first");
        if (Set.copyOf(settings).size() < settings.size()) {
            session.problems().add(session.placeOf("settings weakest first"), "names a setting twice");
        } else if (settings.size() == 1) {
            session.problems().add(session.placeOf("settings weakest first"), "is a list of two settings or more");
        }
        return settings;
    }

    private static Calibration calibration(Keys keys) {
        keys.onlyKnown("a calibration", CALIBRATION_KEYS);
        Optional<Amount> before = keys.amount("before", Unit::isLevel, LEVEL);
        Optional<Amount> after = keys.amount("after", Unit::isLevel, LEVEL);
        if (before.isPresent()
                && after.isPresent()
                && before.get().unit() != after.get().unit()) {
            keys.problems().add(keys.placeOf("after"), "is in another unit than 'before'");
        }
        return new Calibration(before, after, keys.text("dated").filter(text -> isDate(keys, text)));
    }

    private static boolean isDate(Keys keys, String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeParseException e) {
            keys.problems().add(keys.placeOf("dated"), "'dated: " + text + "': expected a date as 2026-05-02");
            return false;
        }
    }
}
