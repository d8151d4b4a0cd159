package org.ellwand.cli;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
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
    private final SortedMap<String, Supplier<String>> schemas;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "claims or session")
    private String of = "";

    /** @param schemas the text of each schema by the name it is asked for */
    SchemaCommand(Map<String, Supplier<String>> schemas) {
        this.schemas = new TreeMap<>(schemas);
    }

    @Override
    public Integer call() {
        Supplier<String> schema = schemas.get(of);
        if (schema == null) {
            String accepted = String.join(" and ", schemas.keySet());
            throw new ParameterException(
                    spec.commandLine(), "there is no schema of '" + of + "'; there are " + accepted);
        }
        spec.commandLine().getOut().println(schema.get().stripTrailing());
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
    }
}
