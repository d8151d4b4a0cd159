package org.ellwand.check;

import java.util.Comparator;
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
    /** Between conditions. */
    private static final String PARTED = ", ";

    private static final Set<String> BOUNDS_BESIDE =
            Set.of(OwnNoise.NOT_TOLD_APART, RoomNoise.NOT_TOLD_APART, HarmonicFloor.AT_NOISE);

    /** By session, check, reading, bands and text. */
    public static final Comparator<Finding> ORDER = Comparator.comparing(Finding::session)
            .thenComparing(Finding::check)
            .thenComparing(Finding::reading)
            .thenComparing(f -> f.bands().stream().findFirst().orElse(0.0))
            .thenComparing(Finding::text);

    /**
     * Keeps a copy of the bands.
     *
     * @param check name of the check
     * @param session id of the session it is about
     * @param reading which reading or readings, as the conditions they have in common
     * @param bands nominal band centres in Hz
     * @param remark what is said of it, with the figure and the threshold
     * @param errs which way the fault errs
     * @param consequence what follows
     * @param measure the figure and the threshold it was held against
     * @param about which numbers the fault can have touched
     */
    public Finding {
        bands = List.copyOf(bands);
    }

    /**
     * A finding that is not about a number and can have touched every number.
     *
     * @param check name of the check
     * @param session id of the session it is about
     * @param reading the conditions that the readings have in common; empty for the session as a whole
     * @param bands nominal band centres in Hz; empty where no band is meant
     * @param remark what is said of it
     * @param errs which way the fault errs
     * @param consequence what follows
     */
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

    /** {@return what is said of it, in English, without a full stop} */
    public String text() {
        return remark.text();
    }

    /**
     * {@return whether a level is only a bound and its spectrum does not say so} Bounds of {@link BackgroundFloor} stand in
     * the levels already; those of noise that was read elsewhere do not.
     */
    public boolean isBoundBeside() {
        return consequence == Consequence.BOUNDED && BOUNDS_BESIDE.contains(remark.key());
    }

    /** {@return whether the noise of the product itself makes a level only a bound} */
    public boolean isOfOwnNoise() {
        return consequence == Consequence.BOUNDED && remark.key().equals(OwnNoise.NOT_TOLD_APART);
    }

    /**
     * What was found against what.
     *
     * @param figure what was found
     * @param threshold what it was held against
     * @param unit of both, as printed
     */
    public record Measure(double figure, double threshold, String unit) {}

    /** Which way a fault errs. */
    public enum Errs {
        /** The true attenuation is larger than what was measured. */
        HIDES_ATTENUATION,
        /** The true attenuation is smaller than what was measured. */
        INVENTS_ATTENUATION,
        /** A time or a share that is none of an attenuation is larger in truth. */
        READS_LOW,
        /** It is smaller in truth. */
        READS_HIGH,
        /** Neither way is known. */
        EITHER;

        /** {@return the key that files and templates have} As {@code hides attenuation}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }

        /** {@return the way as the end of a line says it} */
        public String text() {
            return this == EITHER ? "may err either way" : word();
        }
    }

    /** Which numbers a fault touches, of those that come from the readings it is about. */
    public enum About {
        /** Every number that comes from these readings. */
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
        /** Nothing follows; a reader is told. */
        NOTED,
        /** Used, with more uncertainty. */
        WIDENED,
        /** Used as a bound only. */
        BOUNDED,
        /** Nothing firm may stand on it: no verdict that it could have caused is firm. */
        UNUSABLE;

        /** {@return the key that files and templates have} As {@code unusable}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** {@return what follows, as the end of a line says it} */
        public String text() {
            return switch (this) {
                case NOTED -> "noted";
                case WIDENED -> "widened: used, with more uncertainty";
                case BOUNDED -> "bounded: used as a bound only";
                case UNUSABLE -> "unusable: no verdict that it could have caused is firm";
            };
        }
    }

    /**
     * {@return whether it is about a reading, perhaps among others}
     *
     * @param of the conditions of the reading
     */
    public boolean touches(Conditions of) {
        return of.get("session").equals(Optional.of(session)) && (reading.isEmpty() || isAbout(of.toString()));
    }

    /** Whether every condition of its reading is among these; both lists are parted alike. */
    private boolean isAbout(String conditions) {
        String all = PARTED + conditions + PARTED;
        int from = 0;
        for (int to = reading.indexOf(PARTED); to >= 0; to = reading.indexOf(PARTED, from)) {
            if (!all.contains(PARTED + reading.substring(from, to) + PARTED)) {
                return false;
            }
            from = to + PARTED.length();
        }
        return all.contains(PARTED + reading.substring(from) + PARTED);
    }
}
