package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/** How large an odd insertion must be to be found among how many, by drawing sessions. */
class OddInsertionTest {
    private static final double INSERTION_DB = 1.2;
    private static final double READING_DB = 0.3;
    private static final double PLANTED_DB = 6.5;

    private static Session drawn(int insertions, double plantedDb, Random random) {
        MadeSession made = new MadeSession("yard")
                .cause("insertion", INSERTION_DB, SharedBy.INSERTION)
                .cause("reading", READING_DB, SharedBy.READING)
                .pink(94);
        for (int i = 1; i <= insertions; i++) {
            double off = INSERTION_DB * random.nextGaussian() + READING_DB * random.nextGaussian();
            double level = 60 + off + (i == 1 ? plantedDb : 0);
            made.reading("device=Skerry, stimulus=pink-94, insertion=" + i, f -> level);
        }
        return made.session();
    }

    private static long accused(int sessions, int insertions, double plantedDb) {
        Random random = new Random(7 * insertions + (long) plantedDb);
        return IntStream.range(0, sessions)
                .mapToObj(
                        i -> Inspecting.by(new OddInsertion(), java.util.List.of(drawn(insertions, plantedDb, random))))
                .filter(findings -> findings.stream()
                        .anyMatch(f -> plantedDb == 0 || f.reading().contains("insertion=1")))
                .count();
    }

    @Test
    void oneThatLiesFarOffIsFoundMoreOftenThanNot() {
        assertThat(accused(400, 3, PLANTED_DB)).isGreaterThan(200);
        assertThat(accused(400, 4, PLANTED_DB)).isGreaterThan(200);
        assertThat(accused(400, 5, PLANTED_DB)).isGreaterThan(200);
        assertThat(accused(400, 10, PLANTED_DB)).isGreaterThan(200);
    }

    /** At 1 in 2000, four of 2000 or more come up once in 50 tests; the seed is fixed. */
    @Test
    void soundOnesAreHardlyEver() {
        for (int insertions : new int[] {2, 3, 4, 5, 8}) {
            assertThat(accused(2000, insertions, 0))
                    .as("%s insertions", insertions)
                    .isLessThan(4);
        }
    }

    /** Where all lie far apart none is odd: that is the product, or its fit. */
    @Test
    void whereAllScatterNoneIsOdd() {
        MadeSession made = new MadeSession("yard")
                .cause("insertion", INSERTION_DB, SharedBy.INSERTION)
                .pink(94);
        for (int i = 1; i <= 4; i++) {
            double level = 50 + 9 * i;
            made.reading("device=Skerry, stimulus=pink-94, insertion=" + i, f -> level);
        }
        assertThat(Inspecting.by(new OddInsertion(), java.util.List.of(made.session())))
                .isEmpty();
    }
}
