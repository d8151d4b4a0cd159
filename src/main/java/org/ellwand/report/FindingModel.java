package org.ellwand.report;

import java.util.Map;
import java.util.stream.Collectors;
import org.ellwand.check.Finding;

/** A finding about the data as templates see it. */
final class FindingModel {
    private FindingModel() {}

    static Map<String, Object> of(Finding finding) {
        return Fields.of("check", finding.check())
                .and("session", finding.session())
                .and("reading", finding.reading().replace("=", " "))
                .and("bands", finding.bands().stream().map(Numbers::hertz).collect(Collectors.joining(", ")))
                .and("text", finding.text())
                .and("key", finding.key())
                .and("figures", finding.figures())
                .and("errs", finding.errs().word())
                .and("consequence", finding.consequence().word())
                .map();
    }
}
