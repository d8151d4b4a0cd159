package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
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

    private static void refused(String json, String message) {
        assertThatThrownBy(() -> AuditRecordReader.read(json.getBytes(StandardCharsets.UTF_8), "audit.json"))
                .isInstanceOf(InputException.class)
                .hasMessage(message);
    }
}
