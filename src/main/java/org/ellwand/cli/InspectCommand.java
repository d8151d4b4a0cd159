package org.ellwand.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.ellwand.audit.FolderContents;
import org.ellwand.check.Finding;
import org.ellwand.check.Inspection;
import org.ellwand.check.NotChecked;
import org.ellwand.measurement.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
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

    InspectCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Integer call() throws Exception {
        AuditedFolder.check(folder);
        FolderContents contents = progress.during("reading ...", () -> FolderContents.read(folder));
        Inspection inspection = Inspection.of(contents.sessions()).against(contents.products());
        PrintWriter out = spec.commandLine().getOut();
        contents.sessions().forEach(session -> print(out, session, inspection));
        out.println(counted(inspection.findings().size(), "finding", "findings") + " in "
                + counted(contents.sessions().size(), "session", "sessions"));
        out.flush();
        return ExitCode.DONE;
    }

    private static void print(PrintWriter out, Session session, Inspection inspection) {
        line(out, "session " + session.id() + " (" + session.file() + ")");
        inspection.findings().stream()
                .filter(f -> f.session().equals(session.id()))
                .forEach(f -> print(out, f));
        inspection.notChecked().stream()
                .filter(n -> n.session().equals(session.id()))
                .forEach(n -> line(out, "  " + notChecked(n)));
        out.println();
    }

    private static void print(PrintWriter out, Finding finding) {
        line(out, "  " + finding.check() + ": " + finding.text());
        String where = finding.reading().replace("=", " ") + bands(finding);
        if (!where.isEmpty()) {
            line(out, "    at " + where);
        }
        line(out, "    " + finding.errs().text() + "; " + finding.consequence().text());
    }

    private static String notChecked(NotChecked not) {
        return "not checked, " + not.check() + ": " + not.because();
    }

    private static String bands(Finding finding) {
        if (finding.bands().isEmpty()) {
            return "";
        }
        double lowest = finding.bands().get(0);
        double highest = finding.bands().get(finding.bands().size() - 1);
        String range = lowest == highest ? hertz(lowest) : hertz(lowest) + " to " + hertz(highest);
        return (finding.reading().isEmpty() ? "" : "; ") + range + " Hz ("
                + counted(finding.bands().size(), "band", "bands") + ")";
    }

    private static String hertz(double hz) {
        return hz == Math.rint(hz) ? Long.toString((long) hz) : Double.toString(hz);
    }

    private static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** What stands in a file is not to steer a terminal. */
    private static void line(PrintWriter out, String text) {
        out.println(Plain.line(text));
    }
}
