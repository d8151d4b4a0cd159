package org.ellwand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Scope;
import org.ellwand.input.InputException;
import org.ellwand.report.ReportOptions;
import org.ellwand.report.ReportWriter;

/** The steps of an audit as they are: read, judge, write for people and for machines. */
final class FolderSteps implements AuditSteps {
    private Optional<Beside<ReportWriter>> writer = Optional.empty();

    /** The templates are read beside, being the other half of what takes long when the program starts. */
    @Override
    public Audit audit(Path folder, Scope scope, int trials) throws InputException, IOException {
        writer = Optional.of(writer(folder));
        return FolderContents.read(folder).judged(scope, trials);
    }

    @Override
    public SortedMap<String, byte[]> render(Audit audit, Path folder, Optional<String> dated, boolean png)
            throws InputException, IOException {
        Beside<byte[]> record = Beside.begin(() -> AuditJson.write(audit));
        ReportWriter ready = writer.orElseGet(() -> writer(folder)).get();
        SortedMap<String, byte[]> files = new TreeMap<>(ready.render(audit, new ReportOptions(dated, png)));
        files.put("audit.json", record.get());
        return files;
    }

    private static Beside<ReportWriter> writer(Path folder) {
        return Beside.begin(() -> ReportWriter.with(AuditedFolder.templates(folder)));
    }
}
