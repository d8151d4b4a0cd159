package org.ellwand.sound;

import java.util.Locale;
import org.ellwand.words.Remark;

/**
 * Something wrong with a recording.
 *
 * @param remark what it is and what follows, without the name of the file
 */
public record RecordingNote(Kind kind, Remark remark) {
    /** The same of a file of this name. */
    public Remark of(String file) {
        return remark.with("file", file);
    }

    /** What is wrong. */
    public enum Kind {
        CLIPPED(true),
        DROPPED(true),
        JUMPS(true),
        OFFSET(false),
        WEAK(false),
        TOO_SHORT(false),
        SHORT(false),
        OUT_OF_REACH(false),
        UNSTEADY(false),
        WRONG_FREQUENCY(true),
        UNCLEAN(false),
        INCOHERENT(false);

        private final boolean spoils;

        Kind(boolean spoils) {
            this.spoils = spoils;
        }

        /** Whether levels of such a recording are wrong by an unknown amount. */
        public boolean spoils() {
            return spoils;
        }

        /** The remark of this kind, still without its figures: {@code recording-too-short}. */
        Remark remark() {
            return Remark.of("recording-" + name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
    }
}
