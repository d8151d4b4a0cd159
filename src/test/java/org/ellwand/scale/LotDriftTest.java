package org.ellwand.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.AuditRecord;
import org.ellwand.audit.AuditRecordReader;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Scope;
import org.ellwand.audit.Verdict;
import org.ellwand.compare.ClaimComparison;
import org.ellwand.compare.Comparer;
import org.ellwand.compare.Comparison;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** A lot whose second firmware takes 0.6 dB less off is found out, and the shift is sized. */
class LotDriftTest {
    private static final double DRIFT_DB = -0.6;
    private static final int UNITS = 60;

    private static final String CLAIMS = """
            product: Skerry Lot
            about: Earplugs of one production lot on an ear simulator (invented)
            decision: {confidence: 95 %}
            assumed: {bands: 125 Hz to 8 kHz, level: 90 to 100 dB SPL, fit: all, statistic: mean, units: mean}
            editions:
              - {id: notes, source: Release notes, dated: 2026-05-04}
            claims:
              - id: same
                edition: notes
                quote: "2.1 takes as much off as 2.0."
                stated: {quantity: attenuation, setting: flood, between: {firmware: ["2.1", "2.0"]}, limit: 0 dB}
                assumed: {tolerance: 0.3 dB}
            """;

    @TempDir
    private Path folder;

    @Test
    void oneFirmwareHeldAgainstTheOtherOnTheSameUnits() throws Exception {
        LotFolder.write(folder, CLAIMS, List.of(new Lot("2.0", 1, UNITS, 0, 1), new Lot("2.1", 1, UNITS, DRIFT_DB, 2)));
        Audit audit = FolderContents.read(folder).judged(Scope.all(), 1000);
        Judgement same = audit.products().get(0).claims().get(0).plain().orElseThrow();
        assertThat(same.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(same.value().orElseThrow()).isCloseTo(DRIFT_DB, within(2 * u(same)));
        assertThat(u(same)).isLessThan(0.5);
    }

    /** Scatter of a unit's mean of three insertions in 19 bands, unit, insertion and reading together. */
    private static final double SCATTER_DB = Math.sqrt(0.5 * 0.5 + 0.8 * 0.8 / 3 + 0.3 * 0.3 / (3 * 19));

    private static final int LARGE_LOT = 500;

    /** Each lot is held against the open ear of its own session, read once in 19 bands. */
    private static final double OPEN_EARS_DB = 0.3 * Math.sqrt(2.0 / 19);

    /** u² = 2 s²/n and what the open ears add; a drift of 0.6 dB is found in a claim of ± 0.3 dB. */
    @Test
    void oneFirmwareHeldAgainstTheOtherOnOtherUnits() throws Exception {
        otherUnits(LARGE_LOT);
    }

    /** The same of a whole production: 7.4 million rows. */
    @Test
    @Tag("slow")
    @EnabledIfSystemProperty(named = "lot.units", matches = "\\d+")
    void oneFirmwareHeldAgainstTheOtherOnSoManyOtherUnits() throws Exception {
        otherUnits(Integer.getInteger("lot.units"));
    }

    private void otherUnits(int units) throws Exception {
        lots(units, CLAIMS);
        Judgement same = FolderContents.read(folder)
                .judged(Scope.all(), 1000)
                .products()
                .get(0)
                .claims()
                .get(0)
                .plain()
                .orElseThrow();
        double expectedU = Math.hypot(SCATTER_DB * Math.sqrt(2.0 / units), OPEN_EARS_DB);
        assertThat(same.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(u(same)).isCloseTo(expectedU, within(0.1 * expectedU));
        assertThat(same.value().orElseThrow()).isCloseTo(DRIFT_DB, within(3 * expectedU));
        assertThat(same.notes()).anyMatch(n -> n.startsWith("other units on either side: the mean over " + units));
    }

    private void lots(int units, String claims) throws Exception {
        LotFolder.write(
                folder, claims, List.of(new Lot("2.0", 1, units, 0, 1), new Lot("2.1", 1 + units, units, DRIFT_DB, 2)));
    }

    /** Each firmware audited by itself, unit by unit: what is held against each other are the lots, not two units of them. */
    @Test
    void auditsOfTwoLotsShiftByTheDrift() throws Exception {
        lots(60, EACH);
        FolderContents contents = FolderContents.read(folder);
        Comparison comparison = new Comparer(Optional.of(new Amount(1, Unit.DB, 0)))
                .compare(record(contents, "2.0"), record(contents, "2.1"));
        ClaimComparison.OfCell lot =
                comparison.products().get(0).claims().get(0).deciding().orElseThrow();
        double expectedU = Math.hypot(SCATTER_DB * Math.sqrt(2.0 / 60), OPEN_EARS_DB);
        assertThat(lot.units()).contains(new ClaimComparison.Units(60, 60, 0));
        assertThat(lot.shift().value()).isCloseTo(DRIFT_DB, within(3 * expectedU));
        assertThat(lot.shift().standardUncertainty().orElseThrow()).isCloseTo(expectedU, within(0.2 * expectedU));
        assertThat(lot.shift().isMoreThanNoise(0.95)).isTrue();
        assertThat(lot.shift().isEquivalent(0.95)).isTrue();
    }

    /** The same units twice: what is a unit's own cancels, and the twelve that moved most are told. */
    @Test
    void auditsOfTheSameUnitsShiftByTheMeanOfTheirShifts() throws Exception {
        LotFolder.write(folder, EACH, List.of(new Lot("2.0", 1, UNITS, 0, 1), new Lot("2.1", 1, UNITS, DRIFT_DB, 1)));
        FolderContents contents = FolderContents.read(folder);
        ClaimComparison claim = new Comparer(Optional.empty())
                .compare(record(contents, "2.0"), record(contents, "2.1"))
                .products()
                .get(0)
                .claims()
                .get(0);
        ClaimComparison.OfCell lot = claim.deciding().orElseThrow();
        assertThat(lot.units()).contains(new ClaimComparison.Units(UNITS, UNITS, UNITS));
        // The seed is the same, so that nothing but the drift and the rounding to 0.001 dB is left.
        assertThat(lot.shift().value()).isCloseTo(DRIFT_DB, within(0.001));
        assertThat(lot.shift().standardUncertainty().orElseThrow()).isLessThan(0.11);
        assertThat(claim.cells()).hasSize(1 + 12);
    }

    /** One unit that watches the line is in both lots: it is told beside the lots, and does not stand for them. */
    @Test
    void auditsOfTwoLotsWithAUnitInBothShiftByTheDrift() throws Exception {
        LotFolder.write(folder, EACH, List.of(new Lot("2.0", 1, 60, 0, 1), new Lot("2.1", 60, 60, DRIFT_DB, 2)));
        FolderContents contents = FolderContents.read(folder);
        ClaimComparison claim = new Comparer(Optional.empty())
                .compare(record(contents, "2.0"), record(contents, "2.1"))
                .products()
                .get(0)
                .claims()
                .get(0);
        ClaimComparison.OfCell lot = claim.deciding().orElseThrow();
        double expectedU = Math.hypot(SCATTER_DB * Math.sqrt(2.0 / 60), OPEN_EARS_DB);
        assertThat(lot.units()).contains(new ClaimComparison.Units(60, 60, 1));
        assertThat(lot.shift().value()).isCloseTo(DRIFT_DB, within(3 * expectedU));
        assertThat(lot.shift().standardUncertainty().orElseThrow()).isCloseTo(expectedU, within(0.2 * expectedU));
        assertThat(claim.cells()).hasSize(1 + 1);
    }

    private static AuditRecord record(FolderContents contents, String firmware) throws Exception {
        Scope scope = new Scope(Set.of(), Set.of(), Set.of(firmware), Set.of());
        return AuditRecordReader.read(AuditJson.write(contents.judged(scope, 1000)), "audit.json");
    }

    private static final String EACH = """
            product: Skerry Lot
            about: Earplugs of one production lot on an ear simulator (invented)
            assumed: {bands: 125 Hz to 8 kHz, level: 90 to 100 dB SPL, fit: all, firmware: all, statistic: mean, units: each}
            editions:
              - {id: datasheet, source: Data sheet, dated: 2026-05-04}
            claims:
              - id: every-unit
                edition: datasheet
                quote: "Every flood plug takes 18 dB off."
                stated: {quantity: attenuation, setting: flood, limit: 18 dB}
                assumed: {tolerance: 4 dB}
            """;

    private static double u(Judgement judgement) {
        return judgement.standardUncertainty().orElseThrow();
    }
}
