package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.statistics.Sample;
import org.junit.jupiter.api.Test;

class AttenuationTableTest {
    private static SortedMap<Integer, Double> subject(double at500Db, double at1000Db) {
        return new TreeMap<>(Map.of(500, at500Db, 1000, at1000Db));
    }

    /** By hand: mean 22, deviations −2, 0, 2, so √(8/2) = 2. */
    @Test
    void meanAndDeviationAreTakenOverTheSubjects() {
        AttenuationTable table =
                AttenuationTable.ofSubjects(List.of(subject(20, 30), subject(22, 30), subject(24, 33)));
        assertThat(table.byHz()).containsOnlyKeys(500, 1000);
        assertThat(table.at(500)).isEqualTo(new Sample(22, 2));
        assertThat(table.at(1000).mean()).isEqualTo(31);
        assertThat(table.at(1000).deviation()).isCloseTo(Math.sqrt(3), within(1e-12));
        assertThat(table.assumedProtectionDb(ProtectionPerformance.factor(84))).containsEntry(500, 20.0);
    }

    @Test
    void aFrequencyThatIsNotThereIsNamed() {
        AttenuationTable table = AttenuationTable.ofSubjects(List.of(subject(20, 30), subject(22, 30)));
        assertThatThrownBy(() -> table.at(63)).hasMessage("the table has no 63 Hz");
        assertThatThrownBy(() -> ProtectionPerformance.factor(50)).hasMessage("ISO 4869-2 has no factor for 50 %");
    }
}
