package org.ellwand.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.ellwand.audit.FolderContents;
import org.ellwand.check.Inspection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads everything of a folder, runs the checks of the data and prints what they find. Judges nothing, writes nothing. */
@Command(
        name = "inspect",
        description = "Reads everything and prints what the data say of themselves; judges and writes nothing.",
        footer = {
            "",
            "Example: look at the readings of the folder yard before they are judged:",
            "  ellwand inspect yard"
        })
final class InspectCommand implements Callable<Integer> {
    private final Progress progress;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..1",
            paramLabel = "FOLDER",
            defaultValue = ".",
            description = "Holds claims/ and measurements/ (default: here).")
    private Path folder = Path.of(".");

    @Option(
            names = "--all",
            description = "Tells each finding in full; otherwise the worst of those alike, and where the others are.")
    private boolean all;

    InspectCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Integer call() throws Exception {
        AuditedFolder.check(folder);
        FolderContents contents = progress.during("reading ...", () -> FolderContents.read(folder));
        Inspection inspection = Inspection.of(contents.sessions()).against(contents.products());
        PrintWriter out = spec.commandLine().getOut();
        new FindingsText(out, inspection, all).print(contents.sessions());
        out.println(FindingsText.counted(inspection.findings().size(), "finding", "findings") + " in "
                + FindingsText.counted(contents.sessions().size(), "session", "sessions"));
        out.flush();
        return ExitCode.DONE;
    }
}
