package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.claim.Statistic;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.Scatter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Points by subject, what a group of repeats adds up to, and statistics that are read off ordered bands. */
class PointsTest {
    private static Points.One point(int subject, int local) {
        return new Points.One(
                subject,
                local,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                10.0 * subject + local,
                new NormalErrors(1),
                false,
                Bound.MEASURED);
    }

    private static Points points(int... counts) {
        List<Points.One> all = new ArrayList<>();
        for (int s = 0; s < counts.length; s++) {
            for (int i = 0; i < counts[s]; i++) {
                all.add(point(s, i));
            }
        }
        return new Points(all);
    }

    @Test
    void pointsOfEverySubject() {
        int[] counts = {1, 3, 0, 2, 5, 1};
        Points points = points(counts);
        assertThat(points.size()).isEqualTo(12);
        for (int s = 0; s < counts.length; s++) {
            int subject = s;
            assertThat(points.of(s)).hasSize(counts[s]).allMatch(p -> p.subject() == subject);
        }
        assertThat(points.of(6)).isEmpty();
        assertThat(points.of(-1)).isEmpty();
        assertThat(points().of(0)).isEmpty();
    }

    /** √(3² + 4²) = 5. */
    @Test
    void scatterOfAGroup() {
        Group group = new Group("insertions|one", 2, new double[][] {{3, 4, 0}, {1, 2, 2}});
        assertThat(group.scatter(0)).isEqualTo(new Scatter(2, 5));
        assertThat(group.scatter(1).scale()).isCloseTo(3, within(1e-12));
        assertThat(group.columns()).isEqualTo(3);
        assertThat(group.effect(1, 2)).isEqualTo(2);
        assertThat(group.label()).isEqualTo("insertions");
        assertThat(new Group("HEADS|a", 2, new double[0][]).label()).isEqualTo("heads");
        assertThat(new Group("HEADS|a", 2, new double[0][]).columns()).isZero();
    }

    /** Sorted: 1, 2, 5, 9; of an even number the median is the lower one. */
    @ParameterizedTest
    @CsvSource({"LOWEST, 1", "HIGHEST, 9", "SPREAD, 8", "MEDIAN, 2"})
    void extremesOfACurve(Statistic statistic, double expected) {
        assertThat(Extremes.of(statistic, new double[] {5, 1, 9, 2})).isEqualTo(expected);
        assertThat(Extremes.isExtreme(statistic)).isTrue();
    }
}
