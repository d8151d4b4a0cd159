package org.ellwand.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import org.ellwand.audit.Audit;
import org.ellwand.audit.Scope;

/** Steps for tests that never come to them. */
final class NoSteps implements AuditSteps {
    @Override
    public Audit audit(Path folder, Scope scope, int trials) {
        throw new AssertionError("nothing was to be judged");
    }

    @Override
    public SortedMap<String, byte[]> render(Audit audit, Path folder, Optional<String> dated, boolean png) {
        throw new AssertionError("nothing was to be written");
    }
}
