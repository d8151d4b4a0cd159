package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SessionReader;
import org.ellwand.plan.Plan;
import org.ellwand.plan.PlanModel;
import org.ellwand.quantity.Quantities;
import org.ellwand.words.Sentences;
import org.junit.jupiter.api.Test;

/** Holds the part of {@code templates/README.md} about plans to the model, and the demo's plan to one page. */
class PlanGuideTest {
    private static Map<String, Object> demo(List<Session> sessions) throws Exception {
        List<Product> products = new ClaimsReader(Quantities.forms(), Set.of()).readAll(Path.of("."));
        return PlanModel.of(
                Plan.of(new Auditor(new AuditOptions(10_000)).audit(products, sessions, List.of())),
                30,
                Sentences.english());
    }

    @Test
    void documentsEveryKeyOfAPlanAndTheDemoFitsOnePage() throws Exception {
        // Before anything is measured everything is planned.
        assertThat(TemplateGuideTest.documented("## What a plan sees")).isEqualTo(ModelPaths.of(demo(List.of())));
        Map<String, Object> model = demo(SessionReader.readAll(Path.of(".")));
        String text = new String(
                TemplateWriter.with(Optional.of(Path.of("templates"))).write("plan.md.ftl", model),
                StandardCharsets.UTF_8);
        assertThat(text.lines().count()).isLessThan(60);
        assertThat(text)
                .contains("Probe tubes are placed by trained people")
                .contains("What comes of it is no rating")
                .contains("Impulses, and anything above 100 dB, are measured on a fixture, not on people.");
    }
}
