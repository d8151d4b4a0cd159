package org.ellwand.cli;

import java.util.List;
import java.util.Set;
import org.ellwand.audit.Scope;
import picocli.CommandLine.Option;

/** {@code --product} and {@code --edition} of the commands that take claims. */
final class ClaimScope {
    @Option(names = "--product", paramLabel = "NAME", description = "Only this product; may be given again.")
    private List<String> products = List.of();

    @Option(names = "--edition", paramLabel = "ID", description = "Only claims of this edition; may be given again.")
    private List<String> editions = List.of();

    /** With all readings. */
    Scope scope() {
        return scope(Set.of(), Set.of());
    }

    /** With the readings of these firmwares and sessions; none named: of all. */
    Scope scope(Set<String> firmwares, Set<String> sessions) {
        return new Scope(Set.copyOf(products), Set.copyOf(editions), firmwares, sessions);
    }
}
