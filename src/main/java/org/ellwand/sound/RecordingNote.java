package org.ellwand.sound;

import java.util.Locale;
import org.ellwand.words.Remark;

/**
 * Something wrong with a recording.
 *
 * @param kind what is wrong
 * @param remark what it is and what follows, without the name of the file
 */
public record RecordingNote(Kind kind, Remark remark) {
    /**
     * {@return the remark with the name of a file}
     *
     * @param file as messages name it
     */
    public Remark of(String file) {
        return remark.with("file", file);
    }

    /** What is wrong. */
    public enum Kind {
        /** The sound is cut off at its top. */
        CLIPPED(true),
        /** Samples are missing amid sound, and equal ones stand in their place. */
        DROPPED(true),
        /** The phase of the calibrator's tone jumps. */
        JUMPS(true),
        /** The samples have a mean that is not 0. */
        OFFSET(false),
        /** The sound is few steps of its format strong. */
        WEAK(false),
        /** The lowest bands cannot be measured in so short a time. */
        TOO_SHORT(false),
        /** The lowest bands scatter by more than half a decibel in so short a time. */
        SHORT(false),
        /** The sampling rate is too low for the highest bands. */
        OUT_OF_REACH(false),
        /** The calibrator's tone moves. */
        UNSTEADY(false),
        /** The tone is not at the calibrator's frequency. */
        WRONG_FREQUENCY(true),
        /** The tone of which harmonics are read does not last through the part. */
        UNLASTING(true),
        /** Another tone is stronger than that of which harmonics are read. */
        ANOTHER_TONE(true),
        /** Something else is nearly as loud as the calibrator's tone. */
        UNCLEAN(false),
        /** Part of what was recorded does not follow the stimulus. */
        INCOHERENT(false);

        private final boolean spoils;

        Kind(boolean spoils) {
            this.spoils = spoils;
        }

        /** {@return whether levels of such a recording are wrong by an unknown amount} */
        public boolean spoils() {
            return spoils;
        }

        /** The remark of this kind, still without its figures: {@code recording-too-short}. */
        Remark remark() {
            return Remark.of("recording-" + name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
    }
}
