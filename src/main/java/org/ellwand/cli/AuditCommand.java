package org.ellwand.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.ellwand.audit.Audit;
import org.ellwand.audit.ProductAudit;
import org.ellwand.audit.Scope;
import org.ellwand.audit.Verdict;
import org.ellwand.report.JunitXml;
import org.ellwand.report.ReportFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges every claim of a folder and writes the report. */
@Command(
        name = "audit",
        description = "Judges every claim and writes the report.",
        footer = {
            "",
            "Example: judge what is in the folder yard, and let a build fail where a claim fails:",
            "  ellwand audit yard --fail-on fail --junit verdicts.xml"
        })
final class AuditCommand implements Callable<Integer> {

    private final AuditSteps steps;
    private final Progress progress;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..1",
            paramLabel = "FOLDER",
            defaultValue = ".",
            description = "Holds claims/ and measurements/ (default: here).")
    private Path folder = Path.of(".");

    @Mixin
    private ClaimScope claims = new ClaimScope();

    @Option(
            names = "--firmware",
            paramLabel = "VERSION",
            description = "Only what was measured with this firmware; may be given again.")
    private List<String> firmwares = List.of();

    @Option(names = "--session", paramLabel = "ID", description = "Only readings of this session; may be given again.")
    private List<String> sessions = List.of();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the report goes, replacing an earlier one as a whole (default: report/ in FOLDER).")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--png", description = "Figures as PNG too.")
    private boolean png;

    @Option(
            names = "--fail-on",
            paramLabel = "VERDICT",
            converter = FailOn.Converter.class,
            description =
                    "Ends with exit code 1 where a claim comes out so: fail, marginal or untested;"
                            + " each includes those before it. A waiver that holds lets its claim pass; an expired one does not.")
    private Optional<FailOn> failOn = Optional.empty();

    @Option(names = "--junit", paramLabel = "FILE", description = "Verdicts as test results for a build server.")
    private Optional<Path> junit = Optional.empty();

    @Mixin
    private TrialsOption trials = new TrialsOption();

    @Option(
            names = "--dated",
            paramLabel = "DATE",
            description = "Prints this date, as 2026-09-01 (default: none, so that same inputs give same bytes);"
                    + " waivers are held against it (default: against today).")
    private Optional<String> dated = Optional.empty();

    AuditCommand(AuditSteps steps, Progress progress) {
        this.steps = steps;
        this.progress = progress;
    }

    @Override
    public Integer call() throws Exception {
        DateOption.check(spec, "--dated", dated);
        AuditedFolder.check(folder);
        Path place = out.orElse(folder.resolve("report"));
        ReportFolder report = ReportFolder.at(place, folder);
        Optional<JunitFile> results = JunitFile.at(junit, report.path(), folder);
        Audit audit = progress.during("judging the claims ...", () -> steps.audit(folder, scope(), trials.number()));
        write(report, results, audit);
        say(place, audit);
        return failOn.filter(condition -> condition.isMetBy(audit, today())).isPresent()
                ? ExitCode.CONDITION_MET
                : ExitCode.DONE;
    }

    /** The day that decides whether a waiver still holds: the one asked for, else this one. It changes no report. */
    private LocalDate today() {
        return dated.map(LocalDate::parse).orElseGet(() -> LocalDate.now(ZoneId.systemDefault()));
    }

    private Scope scope() {
        return claims.scope(Set.copyOf(firmwares), Set.copyOf(sessions));
    }

    private void write(ReportFolder report, Optional<JunitFile> results, Audit audit) throws Exception {
        SortedMap<String, byte[]> files =
                new TreeMap<>(progress.during("writing the report ...", () -> steps.render(audit, folder, dated, png)));
        if (results.isPresent()) {
            results.get().addTo(files, JunitXml.write(audit, today()));
        }
        report.write(files);
        if (results.isPresent()) {
            results.get().writeOutside(JunitXml.write(audit, today()));
        }
    }

    private void say(Path place, Audit audit) {
        PrintWriter err = spec.commandLine().getErr();
        err.println("report written to " + place + "/ (audit.html)");
        audit.products().forEach(product -> err.println(counts(product)));
        err.flush();
    }

    private static String counts(ProductAudit product) {
        StringBuilder text = new StringBuilder(Plain.line(product.product().name()));
        for (Verdict verdict : Verdict.values()) {
            text.append(verdict == Verdict.PASS ? ": " : ", ")
                    .append(product.count(verdict))
                    .append(' ')
                    .append(verdict.word());
        }
        return text.toString();
    }
}
