package org.ellwand.report;

import java.util.List;
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
                .and("figures", figures(finding))
                .and("errs", finding.errs().word())
                .and("consequence", finding.consequence().word())
                .map();
    }

    private static List<Object> figures(Finding finding) {
        return finding.figures().entrySet().stream()
                .map(figure -> (Object) Map.of("name", figure.getKey(), "text", text(figure.getValue())))
                .toList();
    }

    private static String text(Object figure) {
        return figure instanceof Double number ? Numbers.plain(number) : figure.toString();
    }
}
