package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class HarmonicDistortionTest {
    @Test
    void oneHarmonicFortyDecibelsDownIsOnePercent() {
        assertThat(HarmonicDistortion.percent(90, 50)).isCloseTo(1, within(1e-12));
        assertThat(HarmonicDistortion.percent(90, Double.NEGATIVE_INFINITY, 50)).isCloseTo(1, within(1e-12));
        assertThat(HarmonicDistortion.percent(90, 50, 50)).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(HarmonicDistortion.percent(90)).isZero();
    }

    /** A square wave has the odd harmonics with amplitudes 1/k: √(1/9 + 1/25 + 1/49) up to the seventh or eighth. */
    @Test
    void squareWave() {
        Map<Integer, Double> levels = new HashMap<>();
        for (int k = 1; k <= 8; k++) {
            levels.put(k, k % 2 == 1 ? 90 - 20 * Math.log10(k) : Double.NEGATIVE_INFINITY);
        }
        double expected = 100 * Math.sqrt(1 / 9.0 + 1 / 25.0 + 1 / 49.0);
        assertThat(HarmonicDistortion.percent(levels, 2, 8).orElseThrow()).isCloseTo(expected, within(1e-10));
        assertThat(HarmonicDistortion.percent(levels, 4, 5).orElseThrow()).isCloseTo(20, within(1e-10));
    }

    /** The whole of it: Σ 1/k² over odd k is π²/8, so 100 √(π²/8 − 1) = 48.34 %, approached from below. */
    @Test
    void wholeSquareWave() {
        double[] odd = new double[100_000];
        for (int i = 0; i < odd.length; i++) {
            odd[i] = -20 * Math.log10(2 * i + 3);
        }
        double limit = 100 * Math.sqrt(Math.PI * Math.PI / 8 - 1);
        assertThat(limit).isCloseTo(48.3426, within(5e-5));
        assertThat(HarmonicDistortion.percent(0, odd)).isLessThan(limit).isCloseTo(limit, within(1e-3));
    }

    /** x + x³/5 of a cosine: cos³ = (3 cos + cos 3)/4, so the third harmonic is (1/20) / (1 + 3/20) of the fundamental. */
    @Test
    void cubicCurveByItsSpectrum() {
        DoubleUnaryOperator wave = t -> Math.cos(t) + Math.pow(Math.cos(t), 3) / 5;
        double percent = HarmonicDistortion.percent(levelDb(wave, 1), levelDb(wave, 2), levelDb(wave, 3));
        assertThat(percent).isCloseTo(100 * 0.05 / 1.15, within(1e-9));
    }

    private static double levelDb(DoubleUnaryOperator wave, int order) {
        int samples = 64;
        double cosine = 0;
        double sine = 0;
        for (int i = 0; i < samples; i++) {
            double phase = 2 * Math.PI * i / samples;
            cosine += wave.applyAsDouble(phase) * Math.cos(order * phase);
            sine += wave.applyAsDouble(phase) * Math.sin(order * phase);
        }
        return 20 * Math.log10(Math.hypot(cosine, sine));
    }

    @Test
    void aHarmonicThatWasNotMeasuredIsNotZero() {
        assertThat(HarmonicDistortion.percent(Map.of(1, 90.0, 2, 50.0), 2, 2)).isPresent();
        assertThat(HarmonicDistortion.percent(Map.of(1, 90.0, 2, 50.0), 2, 3)).isEmpty();
        assertThat(HarmonicDistortion.percent(Map.of(2, 50.0), 2, 2)).isEmpty();
        assertThatThrownBy(() -> HarmonicDistortion.percent(Map.of(1, 90.0), 1, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("harmonics run from 2 on, not from 1 to 3");
    }
}
