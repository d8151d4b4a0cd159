package org.ellwand.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.check.MadeSession;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An invented session with another number of insertions keeps the means of these and their sample covariance. */
class RepeatedTest {
    private static Session measured(int insertions) {
        NormalStream draw = new NormalStream(Seeds.of("repeated", Integer.toString(insertions)));
        MadeSession made = new MadeSession("yard").pink(94).reading("device=open ear, stimulus=pink-94", f -> 80);
        for (int i = 1; i <= insertions; i++) {
            made.reading("device=Skerry, stimulus=pink-94, insertion=" + i, f -> 60 + draw.next());
        }
        return made.session();
    }

    private static double[] levels(Session session, Band band) {
        return session.readings().stream()
                .filter(CurveReading::isInPlace)
                .mapToDouble(r -> r.spectrum().at(band).orElseThrow().levelDb())
                .toArray();
    }

    private static double mean(double[] x) {
        return Arrays.stream(x).average().orElseThrow();
    }

    private static double covariance(double[] x, double[] y) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += (x[i] - mean(x)) * (y[i] - mean(y));
        }
        return sum / (x.length - 1);
    }

    @ParameterizedTest
    @CsvSource({"2, 2", "2, 20", "3, 4", "3, 20", "4, 4", "5, 6", "7, 20"})
    void meansAndCovariancesStay(int measured, int wanted) {
        Session first = measured(measured);
        Session more = Repeated.of(first, wanted);
        List<Band> bands = MadeSession.THIRDS;
        assertThat(levels(more, bands.get(0))).hasSize(wanted);
        for (int b = 1; b < bands.size(); b++) {
            double[] before = levels(first, bands.get(b));
            double[] after = levels(more, bands.get(b));
            assertThat(mean(after)).isCloseTo(mean(before), within(1e-9));
            assertThat(covariance(after, after)).isCloseTo(covariance(before, before), within(1e-9));
            assertThat(covariance(after, levels(more, bands.get(b - 1))))
                    .isCloseTo(covariance(before, levels(first, bands.get(b - 1))), within(1e-9));
        }
    }

    /** One scatters by nothing that is seen; of more than are wanted the first tell it. */
    @ParameterizedTest
    @CsvSource({"1, 6, 0", "6, 2, 1"})
    void theMeanStaysInAnyCase(int measured, int wanted, int scatters) {
        Session first = measured(measured);
        Session more = Repeated.of(first, wanted);
        for (Band band : MadeSession.THIRDS) {
            assertThat(levels(more, band)).hasSize(wanted);
            assertThat(covariance(levels(more, band), levels(more, band)) > 1e-12)
                    .isEqualTo(scatters == 1);
            assertThat(mean(levels(more, band))).isCloseTo(mean(levels(first, band)), within(1e-9));
        }
    }
}
