package org.ellwand.measurement;

import java.util.Optional;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;

/** What was measured at once under one condition: a curve, the harmonics of a tone, a number read off a trace. */
public interface Reading {
    String OPEN_EAR = "open ear";
    String FIELD_MICROPHONE = "field microphone";

    /** What the numbers of a reading are. */
    enum Values {
        LEVELS,
        /** Open ear less product in place, in dB: needs no open ear. */
        ATTENUATION,
        /** Minus attenuation, in dB: needs no open ear. */
        INSERTION_GAIN,
        /** Attenuation of a subject at the hearing threshold, in dB; the only one that a rating may come from. */
        SUBJECT_ATTENUATION,
        /** A single number that was derived from a trace. */
        NUMBER
    }

    /**
     * Everything known of it, the session's defaults filled in; {@code session} is always there; {@code device} is always
     * there ({@link #OPEN_EAR}, {@link #FIELD_MICROPHONE} or a product's name).
     */
    Conditions conditions();

    Values values();

    /** Where the reading begins. */
    Place place();

    /** The numbers, in their order. */
    double[] numbers();

    /** The nominal frequency in Hz at which the size of a cause is looked up for a number. */
    double nominalHz(int number);

    /** The unit of the causes that move the numbers, dB or ms; empty where no declared cause does. */
    Optional<Unit> movedBy();

    /** How much larger the errors of a number are than those of what was read, by what was subtracted from it. */
    default double growth(int number) {
        return 1;
    }

    default String device() {
        return conditions().get("device").orElse("");
    }

    default boolean isOpenEar() {
        return conditions().has("device", OPEN_EAR);
    }

    default boolean isFieldMicrophone() {
        return conditions().has("device", FIELD_MICROPHONE);
    }

    default boolean isInPlace() {
        return !isOpenEar() && !isFieldMicrophone();
    }

    default Optional<String> get(String condition) {
        return conditions().get(condition);
    }
}
