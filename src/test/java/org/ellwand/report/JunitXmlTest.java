package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.ellwand.audit.Audit;
import org.ellwand.audit.ProductAudit;
import org.ellwand.audit.SmallAudit;
import org.junit.jupiter.api.Test;

class JunitXmlTest {
    private static final java.time.LocalDate DAY = java.time.LocalDate.of(2026, 6, 1);

    @Test
    void aClaimIsATestCase() {
        assertThat(new String(JunitXml.write(SmallAudit.audit(), DAY), StandardCharsets.UTF_8))
                .isEqualTo("""
                        <?xml version="1.0" encoding="UTF-8"?>
                        <testsuites name="ellwand">
                          <testsuite name="Skerry Tide" tests="3" failures="1" errors="0" skipped="1">
                            <testcase classname="Skerry Tide" name="flood"/>
                            <testcase classname="Skerry Tide" name="flood-letter">
                              <failure type="fail" message="fail: 17.9 dB, limit at most 12 dB, probability 0.004">\
                        The maker gives 12 dB.&#10;mean attenuation of plain</failure>
                            </testcase>
                            <testcase classname="Skerry Tide" name="bang">
                              <skipped message="untested: needs an impulse source"/>
                            </testcase>
                          </testsuite>
                        </testsuites>
                        """);
    }

    @Test
    void aPrivateLetterIsNotQuoted() {
        assertThat(new String(JunitXml.write(SmallAudit.audit(), DAY), StandardCharsets.UTF_8))
                .doesNotContain(SmallAudit.PRIVATE_QUOTE);
    }

    @Test
    void anyNameGivesWellFormedXml() throws Exception {
        String name = "Tide <\"&'> \n \u0007 \uD83D\uDC42";
        ProductAudit product = new ProductAudit(SmallAudit.product(name, List.of()), List.of());
        byte[] xml = JunitXml.write(new Audit(List.of(), List.of(product), List.of(), List.of()), DAY);

        var document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(xml));
        assertThat(document.getElementsByTagName("testsuite")
                        .item(0)
                        .getAttributes()
                        .getNamedItem("name")
                        .getNodeValue())
                .isEqualTo("Tide <\"&'> \n \uFFFD \uD83D\uDC42");
    }
}
