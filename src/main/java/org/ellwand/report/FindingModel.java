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
                .and("errs", errs(finding.errs()))
                .and("consequence", consequence(finding.consequence()))
                .map();
    }

    private static String errs(Finding.Errs errs) {
        return switch (errs) {
            case HIDES_ATTENUATION -> "hides attenuation";
            case INVENTS_ATTENUATION -> "invents attenuation";
            case EITHER -> "may err either way";
        };
    }

    private static String consequence(Finding.Consequence consequence) {
        return switch (consequence) {
            case NOTED -> "noted";
            case WIDENED -> "uncertainty widened";
            case BOUNDED -> "used as a bound only";
            case UNUSABLE -> "not used";
        };
    }
}
