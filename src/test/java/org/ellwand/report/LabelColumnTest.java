package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LabelColumnTest {
    @Test
    void labelsThatDoNotTouchStayWhereTheyAre() {
        assertThat(LabelColumn.placed(List.of(90.0, 10.0, 50.0), 0, 100, 15)).containsExactly(90.0, 10.0, 50.0);
    }

    /** Three that want one place: the middle one gets it, as symmetry asks. */
    @Test
    void labelsThatWantOnePlaceAreSpreadAroundIt() {
        assertThat(LabelColumn.placed(List.of(50.0, 50.0, 50.0), 0, 100, 10)).containsExactly(40.0, 50.0, 60.0);
    }

    @Test
    void anEdgeIsKeptAndTooManyRunOverTheLowerOne() {
        assertThat(LabelColumn.placed(List.of(2.0, 3.0), 0, 100, 10)).containsExactly(0.0, 10.0);
        assertThat(LabelColumn.placed(List.of(99.0, 99.0), 0, 100, 10)).containsExactly(90.0, 100.0);
        assertThat(LabelColumn.placed(List.of(5.0, 5.0, 5.0), 0, 10, 10)).containsExactly(0.0, 10.0, 20.0);
    }

    @Test
    void noTwoTouchAndOrderIsKept() {
        Random random = new Random(5);
        for (int round = 0; round < 200; round++) {
            List<Double> wanted =
                    Stream.generate(() -> random.nextDouble() * 200).limit(12).toList();
            List<Double> placed = LabelColumn.placed(wanted, 0, 200, 15);
            int[] order = IntStream.range(0, 12)
                    .boxed()
                    .sorted(java.util.Comparator.comparing(wanted::get))
                    .mapToInt(i -> i)
                    .toArray();
            for (int i = 1; i < order.length; i++) {
                assertThat(placed.get(order[i]) - placed.get(order[i - 1])).isGreaterThan(15 - 1e-9);
            }
            assertThat(placed).allMatch(y -> y >= 0 && y <= 200 + 1e-9);
        }
    }
}
