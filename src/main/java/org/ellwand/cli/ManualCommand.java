package org.ellwand.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the page that {@code man} shows, made from what the commands say of themselves. */
@Command(
        name = "manual",
        description = "Prints a manual page for man.",
        footer = {"", "Example: read it:", "  ellwand manual > ellwand.1 && man ./ellwand.1"})
final class ManualCommand implements Callable<Integer>, OfAllCommands {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        out.print(ManualPage.of(spec.root()));
        out.flush();
        return ExitCode.DONE;
    }
}
