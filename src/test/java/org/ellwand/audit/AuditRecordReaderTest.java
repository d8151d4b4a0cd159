package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;

class AuditRecordReaderTest {
    @Test
    void readsBackWhatWasWritten() throws InputException {
        AuditRecord record = AuditRecordReader.read(AuditJson.write(SmallAudit.audit()), "audit.json");
        AuditRecord.OfClaim claim = record.products().get(0).claims().get(0);
        ClaimAudit audited = SmallAudit.audit().products().get(0).claims().get(0);
        assertThat(claim.id()).isEqualTo(audited.claim().id());
        assertThat(claim.verdict()).isEqualTo(audited.verdict());
        assertThat(claim.value()).isEqualTo(audited.plain().orElseThrow().value());
        assertThat(claim.cells().get(0).contributions())
                .isEqualTo(audited.plain().orElseThrow().cells().get(0).contributions());
    }

    @Test
    void saysWhatIsNoRecord() {
        refused("{", "audit.json:1:2: is not JSON: Unexpected end-of-input: expected close marker for Object");
        refused("{}", "audit.json: is no record of an audit: 'format' is not 'ellwand-audit'");
        refused(
                "{\"format\": \"ellwand-audit\", \"version\": 2}",
                "audit.json: is a record of version 2; this program reads version 1");
        refused(
                "{\"format\": \"ellwand-audit\", \"version\": 1}",
                "audit.json: has no list 'products' where a record has one");
        refused(
                "{\"format\": \"ellwand-audit\", \"version\": 1, \"products\": [{\"product\": \"Skerry\"}]}",
                "audit.json: has no 'confidence' between 0 and 1 where a record has one");
    }

    @Test
    void everyKeyOfAClaimIsReadBack() throws InputException {
        AuditRecord.OfProduct product = record("""
                {"id": "flood", "edition": "box", "topic": "less noise", "quote": "15 dB", "paraphrase": "so much",
                 "rule": {"text": "mean attenuation", "unit": "dB"}, "verdict": "marginal", "probability": 0.5,
                 "value": 14.5, "standardUncertainty": 0.8, "point": {"hz": 125}, "cells": [
                   {"conditions": {"ear": "crew-01-left", "setting": "flood"}, "value": 14.5, "standardUncertainty": 0.7,
                    "bands": [{"hz": 125, "value": 14.5}, {"hz": 250, "value": 15}],
                    "contributions": [
                      {"cause": "insertion", "instance": "yard/1", "effect": 0.6},
                      {"cause": "observed scatter", "instance": "insertions", "effect": 0.5, "degreesOfFreedom": 4}]}]}
                """);
        assertThat(product.name()).isEqualTo("Skerry");
        assertThat(product.confidence()).isEqualTo(0.9);
        assertThat(product.claims())
                .containsExactly(new AuditRecord.OfClaim(
                        "flood",
                        "box",
                        "less noise",
                        Optional.of("15 dB"),
                        true,
                        Optional.of("mean attenuation"),
                        "dB",
                        Verdict.MARGINAL,
                        OptionalDouble.of(0.5),
                        OptionalDouble.of(14.5),
                        OptionalDouble.of(0.8),
                        OptionalDouble.of(125),
                        List.of(new AuditRecord.OfCell(
                                Map.of("ear", "crew-01-left", "setting", "flood"),
                                OptionalDouble.of(14.5),
                                OptionalDouble.of(0.7),
                                List.of(
                                        new Contribution("insertion", "yard/1", 0.6, OptionalInt.empty()),
                                        new Contribution("observed scatter", "insertions", 0.5, OptionalInt.of(4))),
                                List.of(125.0, 250.0)))));
    }

    /** A private letter: other words than the maker's. What is null is absent. */
    @Test
    void whatIsNullIsAbsent() throws InputException {
        AuditRecord.OfClaim claim = record("""
                        {"id": "flood", "edition": "letter", "topic": "flood", "quote": null, "paraphrase": "so much",
                         "rule": null, "verdict": "untested", "probability": null, "value": null,
                         "standardUncertainty": null, "point": null, "cells": []}
                        """).claims().get(0);
        assertThat(claim.words()).contains("so much");
        assertThat(claim.verbatim()).isFalse();
        assertThat(claim.rule()).isEmpty();
        assertThat(claim.unit()).isEmpty();
        assertThat(claim.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(claim.probability()).isEmpty();
        assertThat(claim.hz()).isEmpty();
        assertThat(claim.cells()).isEmpty();
    }

    private static String document(double confidence, String claim) {
        return "{\"format\": \"ellwand-audit\", \"version\": 1,"
                + " \"inputs\": [{\"file\": \"claims/a.yaml\", \"sha256\": \"00ff\"}], \"products\": [{\"product\": \"Skerry\", \"confidence\": "
                + confidence + ", \"claims\": [" + claim + "]}]}";
    }

    private static AuditRecord.OfProduct record(String claim) throws InputException {
        byte[] json = document(0.9, claim).getBytes(StandardCharsets.UTF_8);
        return AuditRecordReader.read(json, "audit.json").products().get(0);
    }

    @Test
    void theFilesOfTheAuditAreReadBack() throws InputException {
        byte[] json = document(0.9, "").getBytes(StandardCharsets.UTF_8);
        assertThat(AuditRecordReader.read(json, "audit.json").inputs())
                .containsExactly(new Audit.Input("claims/a.yaml", "00ff"));
        refused(
                document(0.9, "").replace("\"sha256\"", "\"other\""),
                "audit.json: has no text 'sha256' where a record has one");
    }

    @Test
    void namesWhatAClaimLacks() {
        String lacks = "audit.json: has no text '%s' where a record has one";
        refused(document(0.9, "{}"), lacks.formatted("id"));
        refused(document(0.9, "{\"id\": 7}"), lacks.formatted("id"));
        refused(document(0.9, "{\"id\": \"a\", \"edition\": \"b\", \"topic\": \"c\"}"), lacks.formatted("verdict"));
        refused(
                document(0.9, "{\"id\": \"a\", \"edition\": \"b\", \"topic\": \"c\", \"verdict\": \"Perhaps\"}"),
                "audit.json: has a verdict 'perhaps', which is none");
        for (double confidence : new double[] {0, 1, 1.5, -0.5}) {
            refused(document(confidence, ""), "audit.json: has no 'confidence' between 0 and 1 where a record has one");
        }
    }

    @Test
    void saysWhereItIsNoJson() {
        refused(
                "{\"format\": 1,\n  what}",
                "audit.json:2:3: is not JSON: Unexpected character ('w' (code 119)): was expecting double-quote to start"
                        + " property name");
    }

    private static void refused(String json, String message) {
        assertThatThrownBy(() -> AuditRecordReader.read(json.getBytes(StandardCharsets.UTF_8), "audit.json"))
                .isInstanceOf(InputException.class)
                .hasMessage(message);
    }
}
