package org.ellwand.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.ellwand.audit.Audit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.ProductAudit;

/** {@code cells.csv}: one row for each cell of every claim, numbers in full; written where pages do not show them all. */
final class CellTable {
    private static final List<String> BEFORE = List.of("product", "claim");
    private static final List<String> AFTER =
            List.of("insertions", "value", "unit of value", "standard uncertainty", "probability");

    private CellTable() {}

    /** The table; absent where the pages show every cell. */
    static Optional<String> of(Audit audit) {
        boolean needed = claims(audit)
                .anyMatch(claim -> claim.plain()
                        .filter(p -> p.cells().size() > Worst.MOST_CELLS)
                        .isPresent());
        return needed ? Optional.of(written(audit)) : Optional.empty();
    }

    private static Stream<ClaimAudit> claims(Audit audit) {
        return audit.products().stream().flatMap(product -> product.claims().stream());
    }

    private static String written(Audit audit) {
        Set<String> conditions = new TreeSet<>();
        claims(audit)
                .flatMap(claim -> claim.plain().stream())
                .flatMap(plain -> plain.cells().stream())
                .forEach(cell -> conditions.addAll(cell.conditions().names()));
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(text)) {
            csv.writeRecord(joined(BEFORE, conditions, AFTER));
            for (ProductAudit product : audit.products()) {
                product.claims()
                        .forEach(claim -> claim.plain()
                                .ifPresent(plain -> plain.cells()
                                        .forEach(cell -> csv.writeRecord(
                                                row(product.product().name(), claim, cell, conditions)))));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<String> joined(List<String> before, Collection<String> between, List<String> after) {
        List<String> all = new ArrayList<>(before);
        all.addAll(between);
        all.addAll(after);
        return all;
    }

    private static List<String> row(String product, ClaimAudit claim, CellResult cell, Set<String> conditions) {
        String unit =
                claim.plain().map(plain -> plain.rule().limit().unit().symbol()).orElse("");
        List<String> said = new ArrayList<>(conditions.size());
        for (String name : conditions) {
            said.add(VerdictTable.safe(cell.conditions().get(name).orElse("")));
        }
        return joined(
                List.of(
                        VerdictTable.safe(product),
                        VerdictTable.safe(claim.claim().id())),
                said,
                List.of(
                        Integer.toString(cell.insertions()),
                        number(OptionalDouble.of(cell.value())),
                        unit,
                        number(cell.standardUncertainty()),
                        number(cell.probability())));
    }

    /** An absent number, and one beyond what was measured, is empty. */
    private static String number(OptionalDouble value) {
        return value.isPresent() && Double.isFinite(value.getAsDouble()) ? Numbers.exact(value.getAsDouble()) : "";
    }
}
