package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The demo comes to the verdicts that were worked out for it beforehand, apart from this program, from the rules of judging
 * alone (a plain Monte Carlo over the demo's own sheets).
 */
class DemoVerdictsTest {
    @TestFactory
    Stream<DynamicTest> demo() throws IOException, InputException {
        return verdicts(Path.of("."), Path.of("src/test/resources/org/ellwand/demo/expected-verdicts.csv"));
    }

    @TestFactory
    Stream<DynamicTest> start() throws IOException, InputException {
        return verdicts(
                Path.of("src/main/resources/org/ellwand/start"),
                Path.of("src/test/resources/org/ellwand/start/expected-verdicts.csv"));
    }

    private static Stream<DynamicTest> verdicts(Path folder, Path expected) throws IOException, InputException {
        Audit audit = new Auditor(AuditOptions.standard())
                .audit(
                        new ClaimsReader(Quantities.forms(), Set.of()).readAll(folder),
                        SessionReader.readAll(folder),
                        List.of());
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(expected)) {
            return rows.stream().toList().stream()
                    .map(row -> DynamicTest.dynamicTest(
                            row.getField("product") + " " + row.getField("claim") + " " + row.getField("otherwise"),
                            () -> assertThat(verdict(audit, row)).isEqualTo(row.getField("verdict"))));
        }
    }

    private static String verdict(Audit audit, NamedCsvRecord row) {
        ClaimAudit claim = audit.products().stream()
                .filter(p -> p.product().name().equals(row.getField("product")))
                .flatMap(p -> p.claims().stream())
                .filter(c -> c.claim().id().equals(row.getField("claim")))
                .findFirst()
                .orElseThrow();
        if (row.getField("otherwise").isEmpty()) {
            return claim.verdict().word();
        }
        return claim.otherwise().stream()
                .filter(j -> j.rule().name().equals(row.getField("otherwise")))
                .map(j -> j.verdict().word())
                .findFirst()
                .orElseThrow();
    }
}
