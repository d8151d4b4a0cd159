package org.ellwand.report;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.ProductAudit;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;

/** Audits between which every kind of figure is drawn: the demo, the example with series and traces,
 * and the one made by hand. All invented. */
final class FigureSamples {
    private static final int TRIALS = 2000;
    private static final List<Path> FOLDERS =
            List.of(Path.of(""), Path.of("src/test/resources/org/ellwand/examples/series-and-traces"));
    private static final List<Audit> AUDITS = audits();

    private FigureSamples() {}

    private static List<Audit> audits() {
        List<Audit> audits = new ArrayList<>();
        for (Path folder : FOLDERS) {
            try {
                audits.add(new Auditor(new AuditOptions(TRIALS))
                        .audit(
                                new ClaimsReader(Quantities.forms(), Set.of()).readAll(folder),
                                SessionReader.readAll(folder),
                                List.of()));
            } catch (InputException e) {
                throw new IllegalStateException(e);
            }
        }
        audits.add(SampleAudit.audit());
        return audits;
    }

    /** What the templates see of each figure. */
    static List<Map<String, Object>> models() {
        List<Map<String, Object>> models = new ArrayList<>();
        for (Audit audit : AUDITS) {
            for (ProductAudit product : audit.products()) {
                models.addAll(FigureModel.of("together", product, audit.sessions()));
                for (ClaimAudit claim : product.claims()) {
                    models.addAll(FigureModel.of("one", "Skerry", claim, audit.findings(), audit.sessions()));
                }
            }
        }
        return models;
    }

    /** The figures by what their file is called. */
    static SortedMap<String, String> drawn() {
        SortedMap<String, String> drawn = new TreeMap<>();
        for (int i = 0; i < AUDITS.size(); i++) {
            String name = i + "/";
            files(AUDITS.get(i)).forEach((path, svg) -> drawn.put(name + path, svg));
        }
        return drawn;
    }

    static SortedMap<String, String> files(Audit audit) {
        SortedMap<String, String> drawn = new TreeMap<>();
        try {
            ReportWriter.with(Optional.empty())
                    .render(audit, ReportOptions.plain())
                    .forEach((path, bytes) -> {
                        if (path.endsWith(".svg")) {
                            drawn.put(path, new String(bytes, StandardCharsets.UTF_8));
                        }
                    });
        } catch (InputException e) {
            throw new IllegalStateException(e);
        }
        return drawn;
    }
}
