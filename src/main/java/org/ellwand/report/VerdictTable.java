package org.ellwand.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalDouble;
import org.ellwand.amount.Interval;
import org.ellwand.audit.Audit;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.ProductAudit;
import org.ellwand.claim.Claim;
import org.ellwand.input.FormulaSign;

/**
 * {@code verdicts.csv}: one claim a row, numbers in full. RFC 4180; a text that a spreadsheet would take for a formula
 * gets an apostrophe in front.
 */
final class VerdictTable {
    private static final List<String> HEADER = List.of(
            "product",
            "claim",
            "edition",
            "topic",
            "verdict",
            "probability",
            "value",
            "unit",
            "lower",
            "upper",
            "standard uncertainty",
            "interval lower",
            "interval upper",
            "rule",
            "reason");

    private VerdictTable() {}

    static String of(Audit audit) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(text)) {
            csv.writeRecord(HEADER);
            for (ProductAudit product : audit.products()) {
                product.claims()
                        .forEach(claim -> csv.writeRecord(row(product.product().name(), claim)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<String> row(String product, ClaimAudit audited) {
        Claim claim = audited.claim();
        Judgement plain = audited.plain().orElse(null);
        Interval limit = plain == null ? null : plain.rule().limit();
        return List.of(
                safe(product),
                safe(claim.id()),
                safe(claim.edition().id()),
                safe(claim.topic()),
                audited.verdict().word(),
                plain == null ? "" : number(plain.probability()),
                plain == null ? "" : number(plain.value()),
                limit == null ? "" : limit.unit().symbol(),
                limit == null ? "" : end(limit.lower()),
                limit == null ? "" : end(limit.upper()),
                plain == null ? "" : number(plain.standardUncertainty()),
                plain == null ? "" : number(plain.lower()),
                plain == null ? "" : number(plain.upper()),
                plain == null ? "" : safe(plain.text()),
                safe(audited.reason().orElse("")));
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? end(value.getAsDouble()) : "";
    }

    /** An absent end is empty. */
    private static String end(double value) {
        return Double.isFinite(value) ? Numbers.exact(value) : "";
    }

    static String safe(String text) {
        return FormulaSign.guarded(text);
    }
}
