package org.ellwand.sound;

import java.util.List;
import org.ellwand.acoustics.Weighting;

/**
 * The frequency weightings A, C and Z (IEC 61672-1) for samples at 88.2 to 192 kHz. The high-pass poles at 20.6, 107.7 and
 * 737.9 Hz come by the bilinear transform, each of the two at 12.2 kHz by a filter of first order that is exact at 0, 8 and
 * 20 kHz. The response is within 0.03 dB of the formula from 10 Hz to 20 kHz; at 1 kHz it is exact.
 */
final class WeightingFilter {
    private final List<FirstOrder> sections;
    private final double gain;

    WeightingFilter(Weighting weighting, double rateHz) {
        sections = switch (weighting) {
            case A ->
                List.of(
                        FirstOrder.highPass(Weighting.F1_HZ, rateHz),
                        FirstOrder.highPass(Weighting.F1_HZ, rateHz),
                        FirstOrder.highPass(Weighting.F2_HZ, rateHz),
                        FirstOrder.highPass(Weighting.F3_HZ, rateHz),
                        top(rateHz),
                        top(rateHz));
            case C ->
                List.of(
                        FirstOrder.highPass(Weighting.F1_HZ, rateHz),
                        FirstOrder.highPass(Weighting.F1_HZ, rateHz),
                        top(rateHz),
                        top(rateHz));
            case Z -> List.of();
        };
        gain = 1 / Math.sqrt(power(1000, rateHz));
    }

    private static FirstOrder top(double rateHz) {
        return FirstOrder.lowPass(Weighting.F4_HZ, 8_000, 20_000, rateHz);
    }

    private double power(double frequencyHz, double rateHz) {
        return sections.stream()
                .mapToDouble(section -> section.power(frequencyHz, rateHz))
                .reduce(1, (a, b) -> a * b);
    }

    /** Weighting at a frequency in Hz, in dB. */
    double atDb(double frequencyHz, double rateHz) {
        return 10 * Math.log10(power(frequencyHz, rateHz)) + 20 * Math.log10(gain);
    }

    /** Filters the first {@code count} samples in place. */
    void filter(double[] samples, int count) {
        for (FirstOrder section : sections) {
            section.filter(samples, count);
        }
        if (!sections.isEmpty()) {
            for (int i = 0; i < count; i++) {
                samples[i] *= gain;
            }
        }
    }
}
