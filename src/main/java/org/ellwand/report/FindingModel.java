package org.ellwand.report;

import java.util.Map;
import java.util.stream.Collectors;
import org.ellwand.check.Finding;
import org.ellwand.words.Sentences;

/** A finding about the data as templates see it, worded in the sentences of the report. */
final class FindingModel {
    private FindingModel() {}

    static Map<String, Object> of(Finding finding, Sentences sentences) {
        return Fields.of("check", finding.check())
                .and("session", finding.session())
                .and("reading", finding.reading().replace("=", " "))
                .and("bands", finding.bands().stream().map(Numbers::hertz).collect(Collectors.joining(", ")))
                .and("text", sentences.of(finding.remark()))
                .and("key", finding.remark().key())
                .and("figures", RemarkModel.figures(finding.remark().figures(), sentences))
                .and("errs", finding.errs().word())
                .and("consequence", finding.consequence().word())
                .map();
    }
}
