package org.ellwand.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the script by which a shell completes commands and options. */
@Command(
        name = "completion",
        description = "Prints the script by which bash and zsh complete commands and options.",
        footer = {"", "Example: complete in this shell:", "  source <(ellwand completion)"})
final class CompletionCommand implements Callable<Integer>, OfAllCommands {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        out.print(AutoComplete.bash("ellwand", spec.root().commandLine()));
        out.flush();
        return ExitCode.DONE;
    }
}
