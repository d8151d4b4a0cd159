package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
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
import org.junit.jupiter.api.io.TempDir;

/** Holds the part of {@code templates/README.md} about plans to the model, and the demo's plan to one page. */
class PlanGuideTest {
    @TempDir
    Path temp;

    private static Map<String, Object> demo(List<Session> sessions) throws Exception {
        return model(Path.of("."), sessions);
    }

    private static Map<String, Object> model(Path folder, List<Session> sessions) throws Exception {
        List<Product> products = new ClaimsReader(Quantities.forms(), Set.of()).readAll(folder);
        return PlanModel.of(
                Plan.of(new Auditor(new AuditOptions(10_000)).audit(products, sessions, List.of())),
                30,
                Sentences.english());
    }

    @Test
    void documentsEveryKeyOfAPlanAndTheDemoFitsOnePage() throws Exception {
        // Before anything is measured everything is planned.
        Set<String> paths = new TreeSet<>(ModelPaths.of(demo(List.of())));
        paths.addAll(ModelPaths.of(model(unsaid(), List.of())));
        assertThat(TemplateGuideTest.documented("## What a plan sees")).isEqualTo(paths);
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

    /** One claim that names a firmware, and one that does not. */
    private Path unsaid() throws Exception {
        Files.createDirectories(temp.resolve("claims"));
        Files.writeString(temp.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims:
                  - id: all
                    edition: box
                    quote: "Takes 20 dB off."
                    stated: {quantity: attenuation, limit: at least 20 dB}
                    assumed: {bands: 1 kHz, statistic: mean, level: 80 dB SPL}
                  - id: better
                    edition: box
                    quote: "Better than before."
                    stated: {quantity: attenuation, between: {firmware: ["2.1", "2.0"]}, limit: at least 2 dB}
                    assumed: {bands: 1 kHz, statistic: mean, level: 80 dB SPL}
                """);
        return temp;
    }
}
