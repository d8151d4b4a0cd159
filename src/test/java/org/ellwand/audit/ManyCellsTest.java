package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/** A lot of invented units: whose curves are kept, and that every unit is told what is its own. */
class ManyCellsTest {
    private static final String RULE =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: at least 15 dB";

    /** 20 dB are taken off by the first, and 0.01 dB less by every further one. */
    private static Session units(int count) {
        Bench bench = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80);
        for (int i = 0; i < count; i++) {
            String unit = String.format(Locale.ROOT, "SN-%03d", i);
            bench.reading("device=Skerry, stimulus=n94, insertion=1, unit=" + unit, 1000, 60 + 0.01 * i);
        }
        return bench.session();
    }

    /** Of 200 cells all keep their curves; of 201 the fifty that took the least off: the last ones. */
    @Test
    void ofManyCellsTheLeastProbableKeepTheirCurves() {
        Judgement all = Bench.judge(RULE + ", units: each", units(200));
        assertThat(all.cells()).hasSize(200).allMatch(c -> c.bands().size() == 1);
        Judgement many = Bench.judge(RULE + ", units: each", units(201));
        assertThat(many.cells()).hasSize(201);
        for (int i = 0; i < 201; i++) {
            CellResult cell = many.cells().get(i);
            assertThat(cell.conditions().get("unit")).contains(String.format(Locale.ROOT, "SN-%03d", i));
            assertThat(cell.bands()).hasSize(i < 151 ? 0 : 1);
            assertThat(cell.inPlaceDb()).hasSize(i < 151 ? 0 : 1);
        }
        // The same numbers, whether a curve is worked out with the others or by itself.
        assertThat(many.cells().get(200).bands().get(0).value())
                .isEqualTo(many.cells().get(200).value());
        assertThat(many.cells().get(200).bands().get(0).standardUncertainty())
                .isEqualTo(many.cells().get(200).standardUncertainty());
        assertThat(many.leastProbable(1))
                .extracting(c -> c.conditions().get("unit").orElseThrow())
                .isEqualTo(List.of("SN-200"));
    }

    /** The curve of every band is what is judged: it is there anyway. */
    @Test
    void ofManyCurvesTheLeastProbableAreKept() {
        Judgement many = Bench.judge(RULE.replace("mean", "every band") + ", units: each", units(201));
        assertThat(many.cells().get(150).bands()).isEmpty();
        assertThat(many.cells().get(151).bands()).hasSize(1);
        assertThat(many.cells().get(151).insertionCurves()).hasSize(1);
    }

    /**
     * Two insertions of each unit lie 4 dB apart, of which each has 1 dB: Σ = 8, more than chance leaves a single number
     * (6.63 at 1 %), and less than it leaves one of 201. So the declared 1/√2 dB stand, in the curve as in the number.
     */
    @Test
    void aCurveByItselfIsAskedAsOneOfAll() {
        Bench bench = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 1, SharedBy.INSERTION, false)
                .cause("reading", 0, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80);
        for (int i = 0; i < 402; i++) {
            String where = String.format(Locale.ROOT, "unit=SN-%03d, insertion=%d", i / 2, i % 2);
            bench.reading("device=Skerry, stimulus=n94, " + where, 1000, 58 + 4 * (i % 2));
        }
        List<CellResult> cells =
                Bench.judge(RULE + ", units: each", bench.session()).leastProbable(50);
        assertThat(cells).allSatisfy(cell -> {
            assertThat(cell.standardUncertainty().orElseThrow()).isCloseTo(Math.sqrt(0.5), within(1e-9));
            assertThat(cell.bands().get(0).standardUncertainty().orElseThrow()).isCloseTo(Math.sqrt(0.5), within(1e-9));
        });
    }

    /** Units that were measured alike share what the causes do to them, and neither their readings nor their names. */
    @Test
    void everyUnitNamesItsOwnReadings() {
        List<CellResult> cells = Bench.judge(RULE + ", units: each", units(4)).cells();
        for (int i = 0; i < 4; i++) {
            assertThat(cells.get(i).contributions())
                    .extracting(Contribution::instance)
                    .containsExactly("yard/1", "yard/Skerry 1 n94 SN-00" + i, "yard/open ear n94");
            assertThat(cells.get(i).value()).isCloseTo(20 - 0.01 * i, within(1e-9));
        }
    }
}
