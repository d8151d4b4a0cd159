package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ellwand.audit.Audit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.ProductAudit;
import org.ellwand.audit.Scope;
import org.ellwand.check.Finding;
import org.ellwand.input.InputException;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Of the demo, whose flange tip leaks in every insertion. */
class TouchingTest {
    private static Audit audit = new Audit(List.of(), List.of(), List.of(), List.of());

    @BeforeAll
    static void judge() throws IOException, InputException {
        audit = FolderContents.read(Path.of("")).judged(Scope.all(), 1000);
    }

    private static List<String> checks(String claim) {
        Judgement plain = audit.products().stream()
                .map(ProductAudit::claims)
                .flatMap(List::stream)
                .filter(audited -> audited.claim().id().equals(claim))
                .flatMap(audited -> audited.plain().stream())
                .findFirst()
                .orElseThrow();
        return Touching.of(audit.findings(), plain).stream()
                .map(Finding::check)
                .distinct()
                .toList();
    }

    @Test
    void aLeakTouchesWhatItsTipDid() {
        assertThat(checks("tip-letter")).contains("slit leak");
        assertThat(checks("octaves-letter")).doesNotContain("slit leak");
    }

    @Test
    void nothingTouchesWhatWasWorkedOutFromAPrintedTable() {
        assertThat(audit.findings()).isNotEmpty();
        assertThat(checks("rating-box")).isEmpty();
    }

    private static Finding about(String device) {
        return new Finding(
                "level drift",
                "yard",
                "device=" + device + ", ear=left",
                List.of(),
                Remark.of("odd-insertion"),
                Finding.Errs.EITHER,
                Finding.Consequence.NOTED);
    }

    /** A product may be called much like the ear without one. */
    @Test
    void whatTheOpenEarDidTouchesEveryDeviceAndWhatAProductDidItsOwn() {
        CellResult cell = SampleCells.number(Map.of("device", "Skerry", "ear", "left"), 20, 1, 0.9);
        assertThat(Touching.touches(about("open ear"), cell)).isTrue();
        assertThat(Touching.touches(about("Skerry"), cell)).isTrue();
        assertThat(Touching.touches(about("open ear plug"), cell)).isFalse();
    }
}
