package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.ellwand.acoustics.Bound;
import org.ellwand.check.Finding;
import org.ellwand.measurement.Conditions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class AuditJsonTest {
    private static final byte[] WRITTEN = AuditJson.write(SmallAudit.audit());

    private final JsonNode document = JsonMapper.shared().readTree(WRITTEN);

    @Test
    void isThisTextToTheByte() throws IOException {
        try (InputStream expected = AuditJsonTest.class.getResourceAsStream("small-audit.json")) {
            assertThat(new String(WRITTEN, StandardCharsets.UTF_8))
                    .isEqualTo(new String(expected.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void theKeysOfAClaimStandInTheirOrder() {
        List<String> before = List.of("id", "edition", "topic", "quote", "rule", "verdict", "probability", "value");
        List<String> after = List.of(
                "correction", "point", "standardUncertainty", "interval", "reason", "cells", "otherwise", "notes");
        for (JsonNode claim : document.at("/products/0/claims")) {
            assertThat(claim.propertyNames()).containsSubsequence(before).containsSubsequence(after);
        }
    }

    @Test
    void anAbsentEndOfALimitIsNull() {
        JsonNode rule = document.at("/products/0/claims/1/rule");
        assertThat(rule.get("lower").isNull()).isTrue();
        assertThat(rule.get("upper").doubleValue()).isEqualTo(12);
    }

    @Test
    void minusZeroIsZero() {
        assertThat(document.at("/products/0/claims/0/otherwise/0/value").toString())
                .isEqualTo("0.0");
    }

    @Test
    void numbersKeepEveryDigitAndTakeNoMore() {
        // Double.toString of Java 17 writes 5.6843418860808015E-14 and 1.9999999999999998E23 here.
        assertThat(JsonForm.write(JsonForm.number(Math.pow(2, -44)))).asString().isEqualTo("5.684341886080802E-14\n");
        assertThat(JsonForm.write(JsonForm.number(2e-3))).asString().isEqualTo("0.002\n");
        assertThat(JsonForm.write(JsonForm.number(2.0E23))).asString().isEqualTo("2.0E23\n");
        assertThat(JsonForm.write(JsonForm.number(0.1 + 0.2))).asString().isEqualTo("0.30000000000000004\n");
    }

    @Test
    void whatIsNotFiniteIsNull() {
        assertThat(JsonForm.number(Double.NaN).isNull()).isTrue();
        assertThat(JsonForm.number(Double.POSITIVE_INFINITY).isNull()).isTrue();
    }

    @Test
    void aPrivateLetterIsNotQuoted() {
        assertThat(new String(WRITTEN, StandardCharsets.UTF_8)).doesNotContain(SmallAudit.PRIVATE_QUOTE);
        JsonNode claim = document.at("/products/0/claims/1");
        assertThat(claim.get("quote").isNull()).isTrue();
        assertThat(claim.get("paraphrase").stringValue()).isEqualTo("The maker gives 12 dB.");
    }

    @Test
    void theSameAuditGivesTheSameBytes() {
        assertThat(AuditJson.write(SmallAudit.audit())).isEqualTo(WRITTEN);
    }

    private static Judgement plain(Bound bound, Contribution... contributions) {
        Judgement judgement =
                SmallAudit.audit().products().get(0).claims().get(0).plain().orElseThrow();
        Point point = new Point(
                OptionalDouble.of(125),
                OptionalDouble.empty(),
                17.9,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                bound);
        CellResult cell = new CellResult(
                Conditions.of(Map.of()),
                1,
                17.9,
                bound,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(point),
                List.of(),
                List.of(),
                List.of(),
                List.of(contributions));
        return new Judgement(
                judgement.rule(),
                "",
                Verdict.MARGINAL,
                OptionalDouble.empty(),
                OptionalDouble.of(17.9),
                OptionalDouble.empty(),
                Optional.of(point),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                List.of(cell),
                List.of());
    }

    private static JsonNode written(Judgement judgement) {
        ObjectNode node = JsonForm.NODES.objectNode();
        JudgementJson.write(node, judgement);
        return JsonMapper.shared().readTree(JsonForm.write(node));
    }

    /** A value that only bounds the true number says so, wherever it stands; a measured one says nothing. */
    @ParameterizedTest
    @CsvSource({"AT_LEAST, above", "AT_MOST, below", "MEASURED, ''"})
    void aBoundIsWritten(Bound bound, String written) {
        JsonNode node = written(plain(bound));
        assertThat(node.at("/point/bound").asString("")).isEqualTo(written);
        assertThat(node.at("/cells/0/bound").asString("")).isEqualTo(written);
        assertThat(node.at("/cells/0/bands/0/bound").asString("")).isEqualTo(written);
    }

    @Test
    void degreesOfFreedomAreWrittenWhereThereAreSome() {
        JsonNode parts = written(plain(
                        Bound.MEASURED,
                        new Contribution("observed scatter", "insertions", 0.5, OptionalInt.of(4)),
                        new Contribution("reading", "yard/1", 0.2)))
                .at("/cells/0/contributions");
        assertThat(parts.get(0).get("degreesOfFreedom").intValue()).isEqualTo(4);
        assertThat(parts.get(1).has("degreesOfFreedom")).isFalse();
    }

    @Test
    void theMeasureOfAFindingIsWrittenWhereItHasOne() {
        Audit audit = SmallAudit.audit();
        Finding plain = audit.findings().get(0);
        Finding measured = new Finding(
                plain.check(),
                plain.session(),
                plain.reading(),
                plain.bands(),
                plain.remark(),
                plain.errs(),
                plain.consequence(),
                Optional.of(new Finding.Measure(7.5, 6, "dB")),
                plain.about());
        JsonNode findings = JsonMapper.shared()
                .readTree(AuditJson.write(
                        new Audit(audit.inputs(), audit.products(), audit.sessions(), List.of(plain, measured))))
                .get("findings");
        assertThat(findings.get(0).has("figure")).isFalse();
        assertThat(findings.get(1).get("figure").doubleValue()).isEqualTo(7.5);
        assertThat(findings.get(1).get("threshold").doubleValue()).isEqualTo(6);
        assertThat(findings.get(1).get("unit").stringValue()).isEqualTo("dB");
    }
}
