package org.ellwand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.junit.jupiter.api.Test;

class TargetCurveTest {
    private static final Band OCTAVE_1K = new Band(Resolution.OCTAVE, 0);

    /** Three equal parts: 10 lg 3 = 4.77 dB more. */
    @Test
    void thirdOctavesAreSummedToOctaves() {
        Spectrum target = Spectrum.of(Resolution.THIRD_OCTAVE, Map.of(800.0, 60.0, 1000.0, 60.0, 1250.0, 60.0));
        assertThat(levelDb(TargetCurve.in(Resolution.OCTAVE, target))).isCloseTo(64.77, within(0.005));
    }

    @Test
    void aSheetAtOctaveCentresHoldsOctaves() {
        Spectrum target = Spectrum.of(Resolution.THIRD_OCTAVE, Map.of(500.0, 58.0, 1000.0, 60.0, 2000.0, 61.0));
        assertThat(TargetCurve.in(Resolution.OCTAVE, target))
                .isEqualTo(Spectrum.of(Resolution.OCTAVE, Map.of(500.0, 58.0, 1000.0, 60.0, 2000.0, 61.0)));
    }

    /** Where one sheet holds both, the octave without its parts is missing and not mistaken for a sum. */
    @Test
    void anOctaveWithPartsMissingIsNotThere() {
        Spectrum target =
                Spectrum.of(Resolution.THIRD_OCTAVE, Map.of(500.0, 58.0, 800.0, 60.0, 1000.0, 60.0, 1250.0, 60.0));
        assertThat(TargetCurve.in(Resolution.OCTAVE, target).bands()).containsExactly(OCTAVE_1K);
    }

    @Test
    void finerThanTheSheetItStaysAsItIs() {
        Spectrum target = Spectrum.of(Resolution.OCTAVE, Map.of(1000.0, 60.0));
        assertThat(TargetCurve.in(Resolution.THIRD_OCTAVE, target)).isSameAs(target);
    }

    private static double levelDb(Spectrum spectrum) {
        return spectrum.at(OCTAVE_1K).orElseThrow().levelDb();
    }
}
