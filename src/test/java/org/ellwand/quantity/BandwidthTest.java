package org.ellwand.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.BandChoice;
import org.junit.jupiter.api.Test;

/** Nominal frequencies of ISO 266. */
class BandwidthTest {
    private static final SortedSet<Band> MEASURED = measured();

    private static SortedSet<Band> measured() {
        SortedSet<Band> bands = new TreeSet<>();
        for (double hz : new double[] {250, 500, 1000, 4000}) {
            bands.add(Band.nearest(Resolution.OCTAVE, hz));
        }
        return bands;
    }

    private static List<Double> hz(List<Band> bands) {
        return bands.stream().map(Band::nominalHz).toList();
    }

    @Test
    void bothEndsBelongToARangeByTheirNominalFrequency() {
        assertThat(hz(Bandwidth.bands(Interval.of(125, 4000, Unit.HZ), Resolution.OCTAVE)))
                .containsExactly(125.0, 250.0, 500.0, 1000.0, 2000.0, 4000.0);
        assertThat(hz(Bandwidth.bands(Interval.of(100, 200, Unit.HZ), Resolution.THIRD_OCTAVE)))
                .containsExactly(100.0, 125.0, 160.0, 200.0);
    }

    @Test
    void aClosedRangeMeansBandsThatWereNotMeasuredToo() {
        BandChoice choice = new BandChoice.Range(Interval.of(250, 1000, Unit.HZ));
        assertThat(hz(Bandwidth.bands(choice, Resolution.OCTAVE, new TreeSet<>())))
                .containsExactly(250.0, 500.0, 1000.0);
    }

    @Test
    void anOpenRangeMeansWhatWasMeasuredThere() {
        BandChoice from = new BandChoice.Range(Interval.atLeast(500, Unit.HZ));
        assertThat(hz(Bandwidth.bands(from, Resolution.OCTAVE, MEASURED))).containsExactly(500.0, 1000.0, 4000.0);
        BandChoice upTo = new BandChoice.Range(Interval.atMost(500, Unit.HZ));
        assertThat(hz(Bandwidth.bands(upTo, Resolution.OCTAVE, MEASURED))).containsExactly(250.0, 500.0);
    }
}
