package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.function.IntFunction;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Session;
import org.ellwand.quantity.Outcome;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Sums of energies under noise that is independent from band to band: the levels are inflated, and what is judged is not.
 * Simulated with 2 dB of noise, so that the inflation, about ln 10 / 20 · variance, shows in 300
 * sittings. Attenuation from repeats only is not held here: the open ear's own inflation is not taken out there.
 */
@Tag("slow")
class EnergiesTest {
    private static final int RUNS = 300;
    private static final int QUANTILES = 20;
    private static final double NOISE_DB = 2;
    private static final String WHERE =
            "setting: flood, level: 94 dB SPL, bands: 125 Hz to 8 kHz, statistic: overall," + " weighting: A, ";
    private static final String ATTENUATION = "quantity: attenuation, " + WHERE + "limit: at least 15 dB";
    private static final String LEVEL =
            "quantity: output level, referred to: eardrum, " + WHERE + "limit: at most 85 dB(A)";

    /** Mean and its standard error. */
    private record Mean(double value, double standardError) {
        static Mean of(double[] values) {
            double mean = Arrays.stream(values).average().orElseThrow();
            double square =
                    Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
            return new Mean(mean, Math.sqrt(square / values.length / (values.length - 1)));
        }

        double standardErrorsFrom(double truth) {
            return Math.abs(value - truth) / standardError;
        }
    }

    /** One open-ear take against three insertions, so that their inflations differ. */
    @Test
    void attenuationWithDeclaredCauses() {
        check(ATTENUATION, 20, run -> new Sittings(true, 3, 1, 0, NOISE_DB).session("crew-01", "declared " + run));
    }

    @Test
    void levelInPlaceWithDeclaredCauses() {
        check(LEVEL, truth(), run -> new Sittings(true, 3, 0, 0, NOISE_DB).session("crew-01", "level " + run));
    }

    @Test
    void levelInPlaceWithRepeatsOnly() {
        check(LEVEL, truth(), run -> new Sittings(false, 4, 0, 0, NOISE_DB).session("crew-01", "repeats " + run));
    }

    /** 60 dB in every band. */
    private static double truth() {
        double energy = Arrays.stream(bands())
                .mapToDouble(b -> Math.pow(10, (60 + Weighting.A.atDb(b.exactHz())) / 10))
                .sum();
        return 10 * Math.log10(energy);
    }

    private static Band[] bands() {
        int first = Band.nearest(Resolution.THIRD_OCTAVE, 125).index();
        int last = Band.nearest(Resolution.THIRD_OCTAVE, 8000).index();
        Band[] bands = new Band[last - first + 1];
        Arrays.setAll(bands, i -> new Band(Resolution.THIRD_OCTAVE, first + i));
        return bands;
    }

    private static void check(String rule, double truth, IntFunction<Session> sitting) {
        Product product = Bench.product(rule);
        double[] value = new double[RUNS];
        double[] judged = new double[RUNS];
        for (int run = 0; run < RUNS; run++) {
            Points.One point = Workings.of(product, Outcome.OVERALL, sitting.apply(run))
                    .evaluation()
                    .points()
                    .get(0);
            value[run] = point.value();
            judged[run] = point.value() + centre(point);
        }
        assertThat(Mean.of(value).standardErrorsFrom(truth))
                .as("inflation shows")
                .isGreaterThan(4);
        assertThat(Mean.of(judged).standardErrorsFrom(truth))
                .as("%s", Mean.of(judged))
                .isLessThan(3);
    }

    /** Where the errors centre: the mean of evenly spaced quantiles. */
    private static double centre(Points.One point) {
        double sum = 0;
        for (int i = 0; i < QUANTILES; i++) {
            sum += point.errors().quantile((i + 0.5) / QUANTILES);
        }
        return sum / QUANTILES;
    }
}
