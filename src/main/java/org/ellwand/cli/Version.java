package org.ellwand.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version the jar was built as. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
                .orElse("(not from a jar)");
        return new String[] {"ellwand " + version, "Java " + System.getProperty("java.version")};
    }
}
