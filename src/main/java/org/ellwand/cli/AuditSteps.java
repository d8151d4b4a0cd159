package org.ellwand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import org.ellwand.audit.Audit;
import org.ellwand.audit.Scope;
import org.ellwand.input.InputException;

/** From a folder to its audit, and from there to the files of a report. */
interface AuditSteps {
    /**
     * Reads and judges.
     *
     * @throws InputException if the claims or the measurements cannot be used
     */
    Audit audit(Path folder, Scope scope, int trials) throws InputException, IOException;

    /**
     * The files of the report by path, the record among them.
     *
     * @param dated the date to print; absent: none
     * @throws InputException if the folder's own templates cannot be used
     */
    SortedMap<String, byte[]> render(Audit audit, Path folder, Optional<String> dated, boolean png)
            throws InputException, IOException;
}
