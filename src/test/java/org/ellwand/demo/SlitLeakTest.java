package org.ellwand.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SlitLeakTest {
    private final SlitLeak leak = new SlitLeak(0.2);

    @Test
    void lowNotesPassWhole() {
        assertThat(leak.gainDb(1)).isCloseTo(0, within(0.01));
    }

    /**
     * Worked by hand for 12 mm × 2 mm × 0.2 mm into 1 cm³: R = 1.71e8 Pa s/m³, M = 4.10e4 kg/m⁴, C = 7.04e-12 m³/Pa; at
     * 500 Hz 1 − ω²MC = −1.85, ωRC = 3.78, magnitude 4.21 or 12.5 dB.
     */
    @Test
    void fiveHundredHertzLosesTwelveAndAHalf() {
        assertThat(leak.gainDb(500)).isCloseTo(-12.5, within(0.1));
    }

    /** Above the resonance of mass and air 12 dB per octave. */
    @Test
    void highNotesLoseTwelveDecibelsAnOctave() {
        assertThat(leak.gainDb(8000) - leak.gainDb(16000)).isCloseTo(12, within(0.2));
    }
}
