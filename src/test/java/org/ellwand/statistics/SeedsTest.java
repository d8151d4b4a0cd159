package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SeedsTest {
    /** {@code printf 'Skerry\0microphone\0' | sha256sum} of GNU coreutils begins so. */
    @Test
    void theSeedIsTheBeginningOfTheHash() {
        assertThat(Seeds.of("Skerry", "microphone")).isEqualTo(0xe6867f2b944b3e2aL);
    }

    @Test
    void bordersBetweenNamesCount() {
        assertThat(Seeds.of("ab", "c")).isNotEqualTo(Seeds.of("a", "bc"));
    }
}
