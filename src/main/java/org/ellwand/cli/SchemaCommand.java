package org.ellwand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SessionReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the JSON Schema of a file that people write, for editors that complete and check. */
@Command(
        name = "schema",
        description = "Prints the JSON Schema of the claims or the session file.",
        footer = {
            "",
            "Example: keep the schema of claims files for an editor:",
            "  ellwand schema claims > claims.schema.json"
        })
final class SchemaCommand implements Callable<Integer> {
    private final SortedMap<String, Function<Set<String>, String>> schemas;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "FILE", description = "claims or session")
    private String of = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "FOLDER",
            description = "Whose sessions declare conditions, which its claims may name (default: none).")
    private Optional<Path> folder = Optional.empty();

    /** @param schemas the text of each schema, from what sessions declare, by the name it is asked for */
    SchemaCommand(Map<String, Function<Set<String>, String>> schemas) {
        this.schemas = new TreeMap<>(schemas);
    }

    @Override
    public Integer call() throws InputException, IOException {
        Function<Set<String>, String> schema = schemas.get(of);
        if (schema == null) {
            String accepted = String.join(" and ", schemas.keySet());
            throw new ParameterException(
                    spec.commandLine(), "there is no schema of '" + of + "'; there are " + accepted);
        }
        spec.commandLine().getOut().println(schema.apply(declared()).stripTrailing());
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
    }

    private Set<String> declared() throws InputException, IOException {
        if (folder.isEmpty()) {
            return Set.of();
        }
        AuditedFolder.check(folder.get());
        return Session.declaredBy(SessionReader.readAll(folder.get()));
    }
}
