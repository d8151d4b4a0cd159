package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.statistics.distribution.TDistribution;
import org.ellwand.acoustics.Resolution;
import org.ellwand.quantity.Outcome;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.Sample;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Means and standard deviations certified by the US National Institute of Standards and Technology (Statistical Reference
 * Datasets, univariate; read in the repository apache/commons-math), each number an insertion of its own.
 *
 * <p>Relative tolerance of s: 1e-8, the floor of double precision for NumAcc4; a one-pass formula misses it by far. That of
 * the mean, 1e-12, is this test's own.
 */
class CertifiedDataTest {
    private static final String MEAN = "quantity: attenuation, setting: flood, level: 94 dB SPL,"
            + " bands: 1 kHz to 1.25 kHz, statistic: mean, limit: at least 15 dB";

    @ParameterizedTest
    @CsvSource({
        "Michelso, 100, 299.852400000000, 0.0790105478190518",
        "Mavro, 50, 2.00185600000000, 0.000429123454003053",
        "Lew, 200, -177.435000000000, 277.332168044316",
        "Lottery, 218, 518.958715596330, 291.699727470969",
        "PiDigits, 5000, 4.53480000000000, 2.86733906028871",
        "NumAcc1, 3, 10000002, 1",
        "NumAcc2, 1001, 1.2, 0.1",
        "NumAcc3, 1001, 1000000.2, 0.1",
        "NumAcc4, 1001, 10000000.2, 0.1"
    })
    void meanAndScatterOfTheInsertions(String name, int n, double mean, double s) throws IOException {
        List<Double> numbers = numbers(name);
        assertThat(numbers).hasSize(n);
        assertThat(Sample.of(numbers).mean()).isCloseTo(mean, within(1e-12 * Math.abs(mean)));
        assertThat(Sample.of(numbers).deviation()).isCloseTo(s, within(1e-8 * s));
        Estimates estimates = estimates(numbers);
        assertThat(-estimates.value[0]).isCloseTo(mean, within(1e-12 * Math.abs(mean)));
        Group group = estimates.groups.get(0);
        assertThat(group.degreesOfFreedom()).isEqualTo(n - 1);
        assertThat(group.scatter(0).scale() * Math.sqrt(n)).isCloseTo(s, within(1e-8 * s));
        double t = TDistribution.of(n - 1).inverseCumulativeProbability((1 + Errors.CENTRAL_SHARE) / 2);
        double u = PointMaker.closed(estimates)[0].standardUncertainty();
        assertThat(u).isCloseTo(t * s / Math.sqrt(n), within(1e-5 * s));
    }

    /** The open ear at 0 turns the sign of the numbers and nothing else. */
    private static Estimates estimates(List<Double> numbers) {
        Bench bench =
                new Bench("crew-01", Resolution.THIRD_OCTAVE).reading("device=open ear, stimulus=n94", 1000, 0, 0);
        for (int i = 0; i < numbers.size(); i++) {
            double number = numbers.get(i);
            bench.reading("device=Skerry, setting=flood, stimulus=n94, insertion=" + (i + 1), 1000, number, number);
        }
        return Workings.of(MEAN, Outcome.MEAN, bench.session()).estimates();
    }

    /** Two files have lines of # and of name = value before the numbers, the others sixty lines of header. */
    private static List<Double> numbers(String name) throws IOException {
        String path = "/org/apache/commons/math3/stat/data/" + name + ".txt";
        try (BufferedReader file = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(CertifiedDataTest.class.getResourceAsStream(path)), StandardCharsets.UTF_8))) {
            List<String> lines = file.lines().toList();
            int header = lines.get(0).startsWith("#") ? 0 : 60;
            return lines.stream()
                    .skip(header)
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#") && !line.contains("="))
                    .map(Double::valueOf)
                    .toList();
        }
    }
}
