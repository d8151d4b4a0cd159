package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ellwand.examples.ExampleFolder;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The example claims against the readings of the models behind them. The verdicts expected, and why, were reckoned from the
 * models (what is true there, and how far the declared errors reach), apart from this program.
 */
class ExampleVerdictsTest {
    private static List<ClaimAudit> audits = List.of();
    private static List<NamedCsvRecord> expected = List.of();

    @BeforeAll
    static void audit(@TempDir Path folder) throws IOException, InputException {
        ExampleFolder examples = new ExampleFolder(folder);
        Audit audit = new Auditor(AuditOptions.standard()).audit(examples.products(), examples.sessions(), List.of());
        audits = audit.products().stream().flatMap(p -> p.claims().stream()).toList();
        Path table = Path.of("src/test/resources/org/ellwand/audit/example-verdicts.csv");
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(table)) {
            expected = rows.stream().toList();
        }
    }

    @Test
    void everyRuleHasAnExpectedVerdictAndAReason() {
        Set<String> rules = new TreeSet<>();
        audits.forEach(a -> {
            rules.add(a.claim().id() + ",");
            a.otherwise().forEach(j -> rules.add(a.claim().id() + "," + j.rule().name()));
        });
        assertThat(expected.stream().map(row -> row.getField("claim") + "," + row.getField("otherwise")))
                .containsExactlyInAnyOrderElementsOf(rules);
        assertThat(expected).allMatch(row -> !row.getField("why").isBlank());
    }

    @Test
    void verdictsAreTheExpectedOnes() {
        List<String> differing = expected.stream()
                .filter(row -> !word(row).equals(row.getField("verdict")))
                .map(row -> row.getField("claim") + " " + row.getField("otherwise") + ": " + word(row) + " instead of "
                        + row.getField("verdict"))
                .toList();
        assertThat(differing).isEmpty();
    }

    private static ClaimAudit claim(NamedCsvRecord row) {
        return audits.stream()
                .filter(a -> a.claim().id().equals(row.getField("claim")))
                .findFirst()
                .orElseThrow();
    }

    private static Optional<Judgement> judgement(NamedCsvRecord row) {
        ClaimAudit claim = claim(row);
        return row.getField("otherwise").isEmpty()
                ? claim.plain()
                : claim.otherwise().stream()
                        .filter(j -> j.rule().name().equals(row.getField("otherwise")))
                        .findFirst();
    }

    private static String word(NamedCsvRecord row) {
        return judgement(row)
                .map(j -> j.verdict().word())
                .orElseGet(() -> claim(row).verdict().word());
    }
}
