package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

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
}
