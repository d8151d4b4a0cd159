package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a draw moves, and how far. */
class EntriesTest {
    /** Of each reading bands 0 and 1; 0.1 dB for reading 1, 0.2 dB for reading 2 and so on. */
    private static Entries entries(int readings) {
        Entries entries = new Entries();
        for (int r = 1; r <= readings; r++) {
            assertThat(entries.add(r, 0, r / 10.0).add(r, 1, r / 10.0)).isSameAs(entries);
        }
        return entries;
    }

    private static BitSet some(int... readings) {
        BitSet some = new BitSet();
        IntStream.of(readings).forEach(some::set);
        return some;
    }

    @Test
    void allThatWasAddedIsThereInItsOrder() {
        Entries entries = entries(9);
        assertThat(entries.size()).isEqualTo(18);
        for (int i = 0; i < 18; i++) {
            assertThat(entries.reading(i)).isEqualTo(1 + i / 2);
            assertThat(entries.band(i)).isEqualTo(i % 2);
            assertThat(entries.sizeDb(i)).isEqualTo((1 + i / 2) / 10.0);
        }
        assertThat(entries.readings()).isEqualTo(some(1, 2, 3, 4, 5, 6, 7, 8, 9));
    }

    @Test
    void allOrNotAllAreOfSomeReadings() {
        assertThat(entries(2).areOf(some(1, 2, 3))).isTrue();
        assertThat(entries(2).areOf(some(1, 3))).isFalse();
        assertThat(entries(2).areOf(some(3))).isFalse();
    }

    @Test
    void aPartHoldsThoseOfItsReadingsAlone() {
        Entries entries = entries(3);
        Entries part = entries.of(some(1, 3));
        assertThat(part.size()).isEqualTo(4);
        assertThat(part.reading(2)).isEqualTo(3);
        assertThat(part.band(3)).isEqualTo(1);
        assertThat(part.sizeDb(2)).isEqualTo(0.3);
        assertThat(entries.of(some(4)).size()).isZero();
        assertThat(entries.of(some(1, 2, 3))).isSameAs(entries);
    }
}
