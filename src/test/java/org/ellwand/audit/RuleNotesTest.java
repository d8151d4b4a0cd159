package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/** What is said beside a verdict: names, zeros, what was left out. */
class RuleNotesTest {
    private static final String RULE =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: at least 15 dB";

    private static Bench bench() {
        return new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80);
    }

    private static Bench plug(Bench bench) {
        return bench.reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60);
    }

    /** The more units, the less is taken off: 20 dB of the first, and 0.01 dB less of every further one. */
    private static Session units(int count) {
        Bench bench = bench();
        for (int i = 0; i < count; i++) {
            String unit = String.format(Locale.ROOT, "SN-%03d", i);
            bench.reading("device=Skerry, stimulus=n94, insertion=1, unit=" + unit, 1000, 60 + 0.01 * i);
        }
        return bench.session();
    }

    @Test
    void aClaimThatNothingNeedsToBeSaidOf() {
        assertThat(Bench.judge(RULE, plug(bench()).session()).notes()).isEmpty();
    }

    @Test
    void earsAndUnitsOfEachAreNamed() {
        assertThat(Bench.judge(RULE + ", ears: each, units: each", plug(bench()).session())
                        .notes())
                .containsExactly(
                        "speaks not of people, but of the ears measured: crew-01-left",
                        "speaks not of the product, but of the units measured: (unit)");
        assertThat(Bench.judge(RULE + ", units: each", units(2)).notes())
                .containsExactly("speaks not of the product, but of the units measured: SN-000, SN-001");
    }

    @Test
    void moreThanThirtyNamesAreCounted() {
        assertThat(Bench.judge(RULE + ", units: each", units(30)).notes())
                .anyMatch(n -> n.startsWith("speaks not of the product")
                        && n.contains("SN-000, SN-001, SN-002")
                        && n.endsWith("SN-029"));
        assertThat(Bench.judge(RULE + ", units: each", units(31)).notes())
                .contains("speaks not of the product, but of the units measured: 31 of them, SN-000 to SN-030");
    }

    /** Where nothing tells the spread, nothing is said of a lot. */
    @Test
    void ofALotOnlyWithItsSpread() {
        assertThat(Bench.judge(RULE + ", units: each", units(30)).notes()).anyMatch(n -> n.contains("of the lot do"));
        Bench unknown =
                new Bench("yard", Resolution.OCTAVE).unknown().reading("device=open ear, stimulus=n94", 1000, 80);
        for (int i = 0; i < 30; i++) {
            unknown.reading("device=Skerry, stimulus=n94, insertion=1, unit=SN-" + i, 1000, 60);
        }
        assertThat(Bench.judge(RULE + ", units: each", unknown.session()).notes())
                .hasSize(1)
                .noneMatch(n -> n.contains("of the lot do"));
    }

    @Test
    void whatIsDeclaredExactIsSaid() {
        Bench bench = bench().cause("calibration", 0, SharedBy.SESSION, false);
        assertThat(Bench.judge(RULE, plug(bench).session()).notes())
                .containsExactly("declared as 0 dB in session yard: calibration");
    }

    @Test
    void anOpenEarOfAnotherLevelIsSaid() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true)
                .scaled()
                .reading("device=open ear, stimulus=n78", 1000, 64)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60)
                .session();
        Judgement judgement = Bench.judge(RULE, session);
        assertThat(judgement.value().orElseThrow()).isEqualTo(20);
        assertThat(judgement.notes())
                .singleElement()
                .isEqualTo("open ear measured under n78 and shifted by +16.0 dB (session yard)");
    }

    /** The ear of the mate has no open ear: what was measured in it is not used, and that is said. */
    @Test
    void whatCannotBeUsedIsSaid() {
        Session session = plug(bench())
                .reading("device=Skerry, stimulus=n94, insertion=1, ear=mate-left", 1000, 50)
                .session();
        Judgement judgement = Bench.judge(RULE + ", ears: each", session);
        assertThat(judgement.cells()).hasSize(1);
        assertThat(judgement.notes())
                .hasSize(2)
                .anyMatch(n -> n.equals("speaks not of people, but of the ears measured: crew-01-left"))
                .contains("not used: no open-ear reading of the same ear and stimulus in session yard");
    }
}
