package org.ellwand.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.AuditRecord;
import org.ellwand.audit.AuditRecordReader;
import org.ellwand.audit.Bench;
import org.ellwand.audit.Verdict;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/**
 * Two firmwares in the same three insertions of one sitting: calibration, insertions and the open ear are shared, and what is
 * left of the difference is the reading noise in place, u = 0.3 · √(2/3) dB a band.
 */
class ComparerTest {
    private static final double READING_DB = 0.3;

    private static Bench sitting() {
        return sitting(80);
    }

    private static Bench sitting(double... openEarDb) {
        return new Bench("crew-01", Resolution.OCTAVE)
                .cause("calibration", 0.7, SharedBy.SESSION, false)
                .cause("insertion", 1.2, SharedBy.INSERTION, false)
                .cause("reading", READING_DB, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, openEarDb);
    }

    private static AuditRecord record(String firmware, double attenuationDb, String limit) throws InputException {
        Bench bench = sitting();
        for (int i = 1; i <= 3; i++) {
            bench.reading(
                    "device=Skerry, stimulus=n94, firmware=" + firmware + ", insertion=" + i, 1000, 80 - attenuationDb);
        }
        byte[] json = AuditJson.write(Bench.audit(
                Bench.product(
                        "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: " + limit),
                AuditOptions.standard(),
                bench.session()));
        return AuditRecordReader.read(json, "audit.json");
    }

    private static ClaimComparison compared(double second, Optional<Amount> margin) throws InputException {
        return new Comparer(margin)
                .compare(record("1.0", 20, "at least 18 dB"), record("2.0", second, "at least 18 dB"))
                .products()
                .get(0)
                .claims()
                .get(0);
    }

    @Test
    void whatBothShareLeavesTheDifference() throws InputException {
        Shift shift = compared(19.4, Optional.empty()).deciding().orElseThrow().shift();
        assertThat(shift.value()).isCloseTo(-0.6, within(1e-9));
        assertThat(shift.standardUncertainty().orElseThrow()).isCloseTo(READING_DB * Math.sqrt(2.0 / 3), within(1e-6));
        // 2 · (1 − Φ(0.6/0.244949)) = 2 · (1 − Φ(2.44949)) = 0.01431
        assertThat(shift.chance().orElseThrow()).isCloseTo(0.01431, within(1e-4));
        assertThat(shift.isMoreThanNoise(0.95)).isTrue();
    }

    @Test
    void aSmallShiftIsNoise() throws InputException {
        Shift shift = compared(19.7, Optional.empty()).deciding().orElseThrow().shift();
        assertThat(shift.isMoreThanNoise(0.95)).isFalse();
        assertThat(shift.isEquivalent(0.95)).isFalse();
    }

    /** Φ((1 − 0.3)/0.244949) = Φ(2.858) = 0.9979; Φ((0.5 − 0.3)/0.244949) = Φ(0.8165) = 0.793. */
    @Test
    void equivalenceIsTwoOneSidedTests() throws InputException {
        assertThat(compared(19.7, Optional.of(new Amount(1, Unit.DB, 0)))
                        .deciding()
                        .orElseThrow()
                        .shift()
                        .isEquivalent(0.95))
                .isTrue();
        Shift narrow = compared(19.7, Optional.of(new Amount(0.5, Unit.DB, 1)))
                .deciding()
                .orElseThrow()
                .shift();
        assertThat(narrow.within().orElseThrow()).isCloseTo(0.793, within(0.001));
        assertThat(narrow.isEquivalent(0.95)).isFalse();
    }

    @Test
    void theSameAuditTwiceShiftsNothing() throws InputException {
        AuditRecord record = record("1.0", 20, "at least 18 dB");
        ClaimComparison claim = new Comparer(Optional.empty())
                .compare(record, record)
                .products()
                .get(0)
                .claims()
                .get(0);
        assertThat(claim.change()).isEqualTo(Change.SAME);
        assertThat(claim.sameWords()).isTrue();
        Shift shift = claim.deciding().orElseThrow().shift();
        assertThat(shift.value()).isZero();
        assertThat(shift.standardUncertainty().orElseThrow()).isZero();
        assertThat(shift.isMoreThanNoise(0.95)).isFalse();
    }

    /** Insertion 1 of one unit is not insertion 1 of another: u² = 2 (1.2²/3 + 0.3²/3), the open ear alone is shared. */
    @Test
    void insertionsOfTwoUnitsAreNotOneAndTheSame() throws InputException {
        Shift shift = new Comparer(Optional.empty())
                .compare(
                        record("1.0, unit=SN-1", 20, "at least 18 dB"),
                        record("2.0, unit=SN-2", 19.4, "at least 18 dB"))
                .products()
                .get(0)
                .claims()
                .get(0)
                .deciding()
                .orElseThrow()
                .shift();
        assertThat(shift.standardUncertainty().orElseThrow())
                .isCloseTo(Math.sqrt(2 * (1.2 * 1.2 + READING_DB * READING_DB) / 3), within(1e-6));
    }

    @Test
    void aVerdictThatFellIsWorse() throws InputException {
        Comparison worse = new Comparer(Optional.empty())
                .compare(record("1.0", 25, "at least 18 dB"), record("2.0", 10, "at least 18 dB"));
        assertThat(worse.isWorse()).isTrue();
        assertThat(Change.of(Verdict.FAIL, Verdict.MARGINAL)).isEqualTo(Change.BETTER);
    }

    @Test
    void whatIsNotTestedAnyMoreIsWorseWhateverItWas() {
        assertThat(Change.of(Verdict.PASS, Verdict.UNTESTED)).isEqualTo(Change.WORSE);
        assertThat(Change.of(Verdict.MARGINAL, Verdict.UNTESTED)).isEqualTo(Change.WORSE);
        assertThat(Change.of(Verdict.FAIL, Verdict.UNTESTED)).isEqualTo(Change.WORSE);
        assertThat(Change.of(Verdict.UNTESTED, Verdict.MARGINAL)).isEqualTo(Change.BETTER);
        assertThat(Change.of(Verdict.UNTESTED, Verdict.FAIL)).isEqualTo(Change.WORSE);
        assertThat(Change.of(Verdict.UNTESTED, Verdict.UNTESTED)).isEqualTo(Change.SAME);
    }

    private static Shift ofBands(String first, String second) throws InputException {
        Session session = sitting(80, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60, 60)
                .session();
        List<AuditRecord> records = new ArrayList<>();
        for (String bands : List.of(first, second)) {
            String rule =
                    "quantity: attenuation, level: 94 dB SPL, statistic: mean, limit: at least 18 dB, bands: " + bands;
            records.add(AuditRecordReader.read(
                    AuditJson.write(Bench.audit(Bench.product(rule), AuditOptions.standard(), session)), "audit.json"));
        }
        return new Comparer(Optional.empty())
                .compare(records.get(0), records.get(1))
                .products()
                .get(0)
                .claims()
                .get(0)
                .deciding()
                .orElseThrow()
                .shift();
    }

    /** The same reading, but not the same bands of it: what moves each band by itself (0.3 dB twice, open ear and worn) is not shared. */
    @Test
    void otherBandsShareNoErrorsOfBands() throws InputException {
        Shift shift = ofBands("1 kHz", "2 kHz");
        assertThat(shift.nothingShared()).isTrue();
        assertThat(shift.standardUncertainty().orElseThrow())
                .isCloseTo(Math.sqrt(2 * (1.2 * 1.2 + 2 * READING_DB * READING_DB)), within(1e-6));
        assertThat(ofBands("1 kHz", "1 kHz").standardUncertainty()).hasValue(0);
    }

    /** Under two sounds, both in both audits, each is held against itself: the second moved by 2 dB and the first by nothing. */
    @Test
    void cellsUnderTwoSoundsAreHeldAgainstTheirOwn() throws InputException {
        List<ClaimComparison.OfCell> cells = new Comparer(Optional.empty())
                .compare(underTwoSounds(17), underTwoSounds(15))
                .products()
                .get(0)
                .claims()
                .get(0)
                .cells();
        assertThat(cells).extracting(c -> c.conditions().get("stimulus")).containsExactly("n62", "n94");
        assertThat(cells.get(0).shift().value()).isCloseTo(-2, within(1e-9));
        assertThat(cells.get(1).shift().value()).isZero();
    }

    private static AuditRecord underTwoSounds(double secondDb) throws InputException {
        Bench bench = sitting().reading("device=open ear, stimulus=n62", 1000, 80);
        for (int i = 1; i <= 3; i++) {
            bench.reading("device=Skerry, stimulus=n94, insertion=" + i, 1000, 80 - 20.3);
            bench.reading("device=Skerry, stimulus=n62, insertion=" + i, 1000, 80 - secondDb);
        }
        byte[] json = AuditJson.write(Bench.audit(
                Bench.product(
                        "quantity: attenuation, level: 60 to 95 dB SPL, bands: 1 kHz, statistic: mean, limit: at least 18 dB"),
                AuditOptions.standard(),
                bench.session()));
        return AuditRecordReader.read(json, "audit.json");
    }
}
