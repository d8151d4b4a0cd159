package org.ellwand.check;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.ellwand.measurement.Conditions;
import org.ellwand.words.Remark;

/**
 * Something the data say about themselves.
 *
 * @param check name of the check
 * @param session id of the session it is about
 * @param reading which reading or readings, as the conditions they have in common; empty where the session as a whole is
 *     meant
 * @param bands nominal band centres in Hz; empty where no band is meant
 * @param remark what is said of it, with the figure and the threshold
 * @param errs which way the fault errs
 * @param consequence what follows
 * @param measure the figure and the threshold it was held against; absent where the finding is not about a number
 * @param about which numbers the fault can have touched
 */
public record Finding(
        String check,
        String session,
        String reading,
        List<Double> bands,
        Remark remark,
        Errs errs,
        Consequence consequence,
        Optional<Measure> measure,
        About about) {
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
            Remark remark,
            Errs errs,
            Consequence consequence) {
        this(check, session, reading, bands, remark, errs, consequence, Optional.empty(), About.EVERYTHING);
    }

    /** In English, without a full stop. */
    public String text() {
        return remark.text();
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
        /** A time or a share that is none of an attenuation is larger in truth. */
        READS_LOW,
        /** It is smaller in truth. */
        READS_HIGH,
        EITHER;

        /** The key that files and templates have: {@code hides attenuation}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }

        /** As the end of a line says it. */
        public String text() {
            return this == EITHER ? "may err either way" : word();
        }
    }

    /** Which numbers a fault touches, of those that come from the readings it is about. */
    public enum About {
        EVERYTHING,
        /** Levels and differences of levels of two readings; not times, nor what is compared within a reading. */
        LEVELS,
        /** Single figures, which the reading names beside their conditions: {@code figure=weight}. */
        FIGURES,
        /** Levels as such; not differences of two levels that err alike. */
        ABSOLUTE_LEVELS
    }

    /** What follows from a finding. */
    public enum Consequence {
        NOTED,
        WIDENED,
        BOUNDED,
        UNUSABLE;

        /** The key that files and templates have: {@code unusable}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** What follows, as the end of a line says it. */
        public String text() {
            return switch (this) {
                case NOTED -> "noted";
                case WIDENED -> "widened: used, with more uncertainty";
                case BOUNDED -> "bounded: used as a bound only";
                case UNUSABLE -> "unusable: no verdict that it could have caused is firm";
            };
        }
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
