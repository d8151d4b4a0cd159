package org.ellwand.check;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ellwand.measurement.Conditions;

/**
 * Something the data say about themselves.
 *
 * @param check name of the check
 * @param session id of the session it is about
 * @param reading which reading or readings, as the conditions they have in common; empty where the session as a whole is
 *     meant
 * @param bands nominal band centres in Hz; empty where no band is meant
 * @param text one English sentence with the figure and the threshold
 * @param errs which way the fault errs
 * @param consequence what follows
 * @param measure the figure and the threshold it was held against; absent where the finding is not about a number
 */
public record Finding(
        String check,
        String session,
        String reading,
        List<Double> bands,
        String text,
        Errs errs,
        Consequence consequence,
        Optional<Measure> measure) {
    /** By session, check, reading, bands and text. */
    public static final Comparator<Finding> ORDER = Comparator.comparing(Finding::session)
            .thenComparing(Finding::check)
            .thenComparing(Finding::reading)
            .thenComparing(f -> f.bands().stream().findFirst().orElse(0.0))
            .thenComparing(Finding::text);

    public Finding {
        bands = List.copyOf(bands);
    }

    public Finding(
            String check,
            String session,
            String reading,
            List<Double> bands,
            String text,
            Errs errs,
            Consequence consequence) {
        this(check, session, reading, bands, text, errs, consequence, Optional.empty());
    }

    /**
     * What was found against what.
     *
     * @param unit of both, as printed
     */
    public record Measure(double figure, double threshold, String unit) {}

    /** Which way a fault errs. */
    public enum Errs {
        HIDES_ATTENUATION,
        INVENTS_ATTENUATION,
        EITHER
    }

    /** What follows from a finding. */
    public enum Consequence {
        NOTED,
        WIDENED,
        BOUNDED,
        UNUSABLE
    }

    /** Whether it is about a reading, perhaps among others. */
    public boolean touches(Conditions of) {
        return of.get("session").equals(Optional.of(session))
                && (reading.isEmpty() || parts(of.toString()).containsAll(parts(reading)));
    }

    private static Set<String> parts(String conditions) {
        return new HashSet<>(Arrays.asList(conditions.split(", ", -1)));
    }
}
