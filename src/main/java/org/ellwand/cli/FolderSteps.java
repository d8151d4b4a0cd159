package org.ellwand.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.Scope;
import org.ellwand.input.InputException;
import org.ellwand.report.ReportOptions;
import org.ellwand.report.ReportWriter;

/** The steps of an audit as they are: read, judge, write for people and for machines. */
final class FolderSteps implements AuditSteps {
    @Override
    public Audit audit(Path folder, Scope scope, int trials) throws InputException, IOException {
        return FolderContents.read(folder).judged(scope, trials);
    }

    @Override
    public SortedMap<String, byte[]> render(Audit audit, Path folder, Optional<String> dated, boolean png)
            throws InputException {
        Optional<Path> templates = Optional.of(folder.resolve("templates")).filter(Files::isDirectory);
        SortedMap<String, byte[]> files =
                new TreeMap<>(ReportWriter.render(audit, new ReportOptions(templates, dated, png)));
        files.put("audit.json", AuditJson.write(audit));
        return files;
    }
}
