package org.ellwand.measurement;

import java.util.Optional;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.input.Place;

/**
 * One measured curve under one condition.
 *
 * @param conditions everything known of it, the session's defaults filled in; {@code session} is always there;
 *     {@code device} is always there ({@link #OPEN_EAR}, {@link #FIELD_MICROPHONE} or a product's name)
 * @param values what the numbers are
 * @param spectrum the numbers
 * @param place where the reading begins (its first row, or the header of its column)
 */
public record Reading(Conditions conditions, Values values, Spectrum spectrum, Place place) {
    public static final String OPEN_EAR = "open ear";
    public static final String FIELD_MICROPHONE = "field microphone";

    /** What the numbers of a sheet are. */
    public enum Values {
        LEVELS,
        /** Open ear less product in place, in dB: needs no open ear. */
        ATTENUATION,
        /** Minus attenuation, in dB: needs no open ear. */
        INSERTION_GAIN,
        /** Attenuation of a subject at the hearing threshold, in dB; the only one that a rating may come from. */
        SUBJECT_ATTENUATION
    }

    public String device() {
        return conditions.get("device").orElse("");
    }

    public boolean isOpenEar() {
        return device().equals(OPEN_EAR);
    }

    public boolean isFieldMicrophone() {
        return device().equals(FIELD_MICROPHONE);
    }

    public boolean isInPlace() {
        return !isOpenEar() && !isFieldMicrophone();
    }

    public Optional<String> get(String condition) {
        return conditions.get(condition);
    }
}
