package org.ellwand.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.ellwand.input.InputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a new folder with a small example. */
@Command(
        name = "start",
        description = "Makes a new folder with a small commented example.",
        footer = {
            "",
            "Example: begin with an invented product, judge it, then put your own in its place:",
            "  ellwand start yard",
            "  ellwand audit yard"
        })
final class StartCommand implements Callable<Integer> {
    private final Example example;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FOLDER", description = "A folder that is not there yet, or is empty.")
    private Path folder = Path.of("");

    StartCommand(Example example) {
        this.example = example;
    }

    @Override
    public Integer call() throws InputException, IOException {
        example.writeTo(folder);
        PrintWriter err = spec.commandLine().getErr();
        err.println("example written to " + folder + "/; next: ellwand audit " + quoted(folder.toString()));
        err.flush();
        return ExitCode.DONE;
    }

    /** As a shell takes it for one word. */
    private static String quoted(String path) {
        return path.matches("[\\w./-]+") ? path : "'" + path.replace("'", "'\\''") + "'";
    }
}
