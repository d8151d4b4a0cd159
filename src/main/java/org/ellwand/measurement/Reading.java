package org.ellwand.measurement;

import java.util.Optional;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;

/** What was measured at once under one condition: a curve, the harmonics of a tone, a number read off a trace. */
public interface Reading {
    /** The device of readings of the ear without a product. */
    String OPEN_EAR = "open ear";
    /** The device of readings of the sound in the field, without an ear. */
    String FIELD_MICROPHONE = "field microphone";

    /** What the numbers of a reading are. */
    enum Values {
        /** Levels at the ear, in dB; a difference needs the open ear beside them. */
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
     * {@return everything known of it, the session's defaults filled in} {@code session} is always there;
     * {@code device} is always there ({@link #OPEN_EAR}, {@link #FIELD_MICROPHONE} or a product's name).
     */
    Conditions conditions();

    /** {@return what the numbers are} */
    Values values();

    /** {@return where the reading begins} */
    Place place();

    /** {@return the numbers, in their order; a new array} */
    double[] numbers();

    /** {@return how many numbers it has} */
    default int size() {
        return numbers().length;
    }

    /**
     * {@return the nominal frequency in Hz at which the size of a cause is looked up for a number}
     *
     * @param number position among {@link #numbers}
     */
    double nominalHz(int number);

    /** {@return the unit of the causes that move the numbers, dB or ms; empty where no declared cause does} */
    Optional<Unit> movedBy();

    /**
     * How much larger the errors of a number are than those of what was read, by what was subtracted from it.
     *
     * @param number position among {@link #numbers}
     * @return a factor, 1 where nothing was subtracted
     */
    default double growth(int number) {
        return 1;
    }

    /** {@return the device: {@link #OPEN_EAR}, {@link #FIELD_MICROPHONE} or a product's name} */
    default String device() {
        return conditions().get(ConditionNames.DEVICE).orElse("");
    }

    /** {@return whether the ear was measured without a product} */
    default boolean isOpenEar() {
        return conditions().has(ConditionNames.DEVICE, OPEN_EAR);
    }

    /** {@return whether the field was measured, without an ear} */
    default boolean isFieldMicrophone() {
        return conditions().has(ConditionNames.DEVICE, FIELD_MICROPHONE);
    }

    /** {@return whether the ear was measured with a product in place} */
    default boolean isInPlace() {
        return !isOpenEar() && !isFieldMicrophone();
    }

    /**
     * {@return what a condition says; empty where it is not there}
     *
     * @param condition its name
     */
    default Optional<String> get(String condition) {
        return conditions().get(condition);
    }
}
