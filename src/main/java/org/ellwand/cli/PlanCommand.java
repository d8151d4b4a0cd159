package org.ellwand.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Scope;
import org.ellwand.plan.Plan;
import org.ellwand.plan.PlanFiles;
import org.ellwand.plan.PlanModel;
import org.ellwand.report.OutputKind;
import org.ellwand.report.ReportFolder;
import org.ellwand.report.TemplateWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what is left to measure. */
@Command(
        name = "plan",
        description = "Says what is left to measure, and writes a session file and an empty sheet for it.",
        footer = {
            "",
            "Example: plan the next sitting in the folder yard, with readings of 20 s:",
            "  ellwand plan yard --seconds 20",
            "Then copy a plan-….yaml and its .csv into yard/measurements/ and fill in the levels."
        })
final class PlanCommand implements Callable<Integer> {
    private static final double LONGEST_S = 3600;

    private final Progress progress;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..1",
            paramLabel = "FOLDER",
            defaultValue = ".",
            description = "Holds claims/, and measurements/ where there are any (default: here).")
    private Path folder = Path.of(".");

    @Mixin
    private ClaimScope claims = new ClaimScope();

    @Option(
            names = "--seconds",
            paramLabel = "S",
            defaultValue = "30",
            description = "How long a reading lasts, for the exposure of the ear (default: ${DEFAULT-VALUE}).")
    private double seconds = 30;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the plan goes, replacing an earlier one that nobody changed since"
                    + " (default: plan/ in FOLDER).")
    private Optional<Path> out = Optional.empty();

    PlanCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Integer call() throws Exception {
        if (!(seconds > 0 && seconds <= LONGEST_S)) {
            throw new ParameterException(
                    spec.commandLine(), "--seconds takes a duration above 0 s and up to 3600 s, not " + seconds);
        }
        AuditedFolder.checkClaims(folder);
        Path place = out.orElse(folder.resolve("plan"));
        ReportFolder target = ReportFolder.at(place, folder, OutputKind.PLAN);
        FolderContents contents = FolderContents.read(folder);
        Scope scope = claims.scope();
        List<Plan> plans = progress.during("planning ...", () -> plans(contents, scope));
        target.write(files(plans));
        say(place, plans);
        return ExitCode.DONE;
    }

    private static List<Plan> plans(FolderContents contents, Scope scope) throws Exception {
        Audit audit = contents.judged(scope, AuditOptions.DEFAULT_TRIALS);
        return Plan.of(audit);
    }

    private SortedMap<String, byte[]> files(List<Plan> plans) throws Exception {
        SortedMap<String, byte[]> files = new TreeMap<>();
        TemplateWriter writer = TemplateWriter.with(AuditedFolder.templates(folder));
        files.put("plan.md", writer.write("plan.md.ftl", PlanModel.of(plans, seconds, writer.sentences())));
        PlanFiles.of(plans).forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        return files;
    }

    private void say(Path place, List<Plan> plans) {
        PrintWriter err = spec.commandLine().getErr();
        err.println("plan written to " + place + "/ (plan.md)");
        plans.forEach(
                plan -> err.println(Plain.line(plan.product().product().name()) + ": " + plan.decided() + " decided, "
                        + plan.outlooks().size() + " open, " + plan.sittings().size()
                        + (plan.sittings().size() == 1 ? " sitting" : " sittings")));
        err.flush();
    }
}
