package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.AuditRecord;
import org.ellwand.audit.AuditRecordReader;
import org.ellwand.audit.Auditor;
import org.ellwand.audit.Scope;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.compare.Comparer;
import org.ellwand.compare.ComparisonModel;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.Test;

/** Holds the part of {@code templates/README.md} about comparisons to the model of two editions of the demo. */
class ComparisonGuideTest {
    private static AuditRecord edition(String id) throws Exception {
        List<Product> products = new ClaimsReader(Quantities.forms(), Set.of()).readAll(Path.of("."));
        List<Session> sessions = SessionReader.readAll(Path.of("."));
        Scope scope = new Scope(Set.of(), Set.of(id), Set.of(), Set.of());
        return AuditRecordReader.read(
                AuditJson.write(new Auditor(new AuditOptions(1000))
                        .audit(scope.products(products), scope.sessions(sessions), List.of())),
                id);
    }

    @Test
    void documentsEveryKeyOfAComparison() throws Exception {
        Object model = ComparisonModel.of(
                new Comparer(Optional.empty()).compare(edition("box-2025"), edition("letter-2026")),
                new ComparisonModel.Names("box", "letter", "", "", false));
        assertThat(TemplateGuideTest.documented("## What a comparison sees"))
                .isEqualTo(new TreeSet<>(ModelPaths.of(model)));
    }
}
