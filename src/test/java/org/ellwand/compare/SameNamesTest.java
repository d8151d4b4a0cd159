package org.ellwand.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.AuditRecord;
import org.ellwand.audit.AuditRecordReader;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Scope;
import org.ellwand.report.TemplateWriter;
import org.ellwand.scale.Lot;
import org.ellwand.scale.LotFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether two audits speak of one sitting is taken from its name; where no sheet is in both, a reader is told so. */
class SameNamesTest {
    private static final String CLAIMS = """
            product: Skerry Lot
            about: Earplugs of one production lot on an ear simulator (invented)
            assumed: {bands: 125 Hz to 8 kHz, level: 90 to 100 dB SPL, fit: all, firmware: all, statistic: mean, units: mean}
            editions:
              - {id: datasheet, source: Data sheet, dated: 2026-05-04}
            claims:
              - id: flood
                edition: datasheet
                quote: "Flood takes 18 dB off."
                stated: {quantity: attenuation, setting: flood, limit: 18 dB}
                assumed: {tolerance: 4 dB}
            """;

    @TempDir
    private Path first;

    @TempDir
    private Path second;

    @Test
    void oneNameForTwoSheetsIsTold() throws Exception {
        Comparison comparison = new Comparer(Optional.empty()).compare(lot(first, 1), lot(second, 2));
        assertThat(comparison.sameNames()).containsExactly("lot-1");
        Map<String, Object> model =
                ComparisonModel.of(comparison, new ComparisonModel.Names("first", "second", "", "", false));
        TemplateWriter writer = TemplateWriter.with(Optional.empty());
        for (String page : List.of("comparison.md.ftl", "comparison.html.ftl", "correction.md.ftl")) {
            assertThat(new String(writer.write(page, model), StandardCharsets.UTF_8))
                    .contains("A sitting of the same name is in both audits (lot-1)");
        }
    }

    @Test
    void oneNameForOneSheetIsNot() throws Exception {
        AuditRecord record = lot(first, 1);
        assertThat(new Comparer(Optional.empty()).compare(record, record).sameNames())
                .isEmpty();
    }

    private static AuditRecord lot(Path folder, long seed) throws Exception {
        LotFolder.write(folder, CLAIMS, List.of(new Lot("2.0", 1, 3, 0, seed)));
        return AuditRecordReader.read(
                AuditJson.write(FolderContents.read(folder).judged(Scope.all(), 1000)), "audit.json");
    }
}
