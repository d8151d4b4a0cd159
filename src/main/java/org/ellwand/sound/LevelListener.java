package org.ellwand.sound;

/** Is told a level at a time, again and again. */
@FunctionalInterface
public interface LevelListener {
    /** Nobody. */
    LevelListener NONE = (timeS, levelDb) -> {};

    /**
     * A time-weighted level.
     *
     * @param timeS since the part of the recording began
     * @param levelDb in dB re full scale; −∞ before any sound
     */
    void level(double timeS, double levelDb);
}
