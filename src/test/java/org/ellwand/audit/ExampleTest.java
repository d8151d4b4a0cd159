package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Folders with what an independent implementation of the same rules says of them ({@code expected.json}): values to 0.02 dB,
 * probabilities to 0.01 (0.002 near 0.05 and 0.95), verdicts exactly. A further case is a further folder.
 */
class ExampleTest {
    private static final Path EXAMPLES = Path.of("src/test/resources/org/ellwand/examples");
    private static final double VALUE_DB = 0.02;
    /** Relative; what first order and 100 000 draws may differ by. */
    private static final double UNCERTAINTY = 0.012;

    private static final double PROBABILITY = 0.01;
    private static final double DECISIVE = 0.002;

    @TestFactory
    Stream<DynamicTest> folders() throws IOException {
        return Files.list(EXAMPLES).sorted().flatMap(ExampleTest::claims);
    }

    private static Stream<DynamicTest> claims(Path folder) {
        try {
            List<Session> sessions = SessionReader.readAll(folder);
            List<Product> products = new ClaimsReader(Quantities.forms(), Set.of()).readAll(folder);
            Audit audit = new Auditor(AuditOptions.standard()).audit(products, sessions, List.of());
            JsonNode expected = JsonMapper.shared().readTree(Files.readString(folder.resolve("expected.json")));
            return StreamSupport.stream(expected.spliterator(), false)
                    .map(node -> DynamicTest.dynamicTest(
                            folder.getFileName() + " " + node.get("id").asString(), () -> compare(node, audit)));
        } catch (Exception e) {
            return Stream.of(DynamicTest.dynamicTest(folder.toString(), () -> {
                throw e;
            }));
        }
    }

    private static void compare(JsonNode expected, Audit audit) {
        ClaimAudit claim = audit.products().stream()
                .flatMap(p -> p.claims().stream())
                .filter(c -> c.claim().id().equals(expected.get("id").asString()))
                .findFirst()
                .orElseThrow();
        assertThat(claim.verdict().word()).isEqualTo(expected.get("verdict").asString());
        if (!expected.get("reason").isNull()) {
            assertThat(claim.reason()).contains(expected.get("reason").asString());
        }
        claim.plain().ifPresent(judgement -> compare(expected, judgement));
        for (JsonNode other : expected.get("otherwise")) {
            Judgement judgement = claim.otherwise().stream()
                    .filter(j -> j.rule().name().equals(other.get("name").asString()))
                    .findFirst()
                    .orElseThrow();
            assertThat(judgement.verdict().word())
                    .as(judgement.rule().name())
                    .isEqualTo(other.get("verdict").asString());
            close(other, "probability", judgement.probability(), tolerance(other));
            close(other, "value", judgement.value(), VALUE_DB);
        }
    }

    private static void compare(JsonNode expected, Judgement judgement) {
        close(expected, "probability", judgement.probability(), tolerance(expected));
        close(expected, "value", judgement.value(), VALUE_DB);
        double uncertainty = expected.get("standardUncertainty").asDouble(0);
        double tolerance = Math.max(VALUE_DB, UNCERTAINTY * uncertainty);
        close(expected, "standardUncertainty", judgement.standardUncertainty(), tolerance);
        if (!expected.get("interval").isNull()) {
            assertThat(judgement.lower().orElseThrow())
                    .isCloseTo(expected.get("interval").get(0).asDouble(), within(VALUE_DB));
            assertThat(judgement.upper().orElseThrow())
                    .isCloseTo(expected.get("interval").get(1).asDouble(), within(VALUE_DB));
        }
    }

    private static double tolerance(JsonNode expected) {
        double p = expected.get("probability").asDouble(0);
        return Math.abs(p - 0.05) < 0.01 || Math.abs(p - 0.95) < 0.01 ? DECISIVE : PROBABILITY;
    }

    private static void close(JsonNode expected, String key, OptionalDouble actual, double tolerance) {
        if (expected.get(key).isNull()) {
            assertThat(actual).as(key).isEmpty();
        } else {
            assertThat(actual.orElseThrow()).as(key).isCloseTo(expected.get(key).asDouble(), within(tolerance));
        }
    }
}
