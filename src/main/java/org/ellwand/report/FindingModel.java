package org.ellwand.report;

import java.util.Locale;
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
                .and("errs", key(finding.errs()))
                .and("consequence", key(finding.consequence()))
                .map();
    }

    /** Small letters and spaces: {@code hides attenuation}. */
    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
