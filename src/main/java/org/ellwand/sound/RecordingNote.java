package org.ellwand.sound;

/**
 * Something wrong with a recording, with what follows.
 *
 * @param text one English sentence
 */
public record RecordingNote(Kind kind, String text) {
    /** What is wrong. */
    public enum Kind {
        CLIPPED(true),
        DROPPED(true),
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
    }
}
