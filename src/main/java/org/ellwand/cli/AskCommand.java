package org.ellwand.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.ellwand.ask.Letter;
import org.ellwand.ask.LetterOptions;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.ProductAudit;
import org.ellwand.audit.Scope;
import org.ellwand.claim.Product;
import org.ellwand.report.OutputKind;
import org.ellwand.report.ReportFolder;
import org.ellwand.report.ResultModel;
import org.ellwand.report.TemplateWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the letters of questions to the makers. */
@Command(
        name = "ask",
        description = "Writes a letter of questions to each maker: what the sentences leave open.",
        footer = {
            "",
            "Example: ask the makers of what is in the folder yard, and for an answer by a day:",
            "  ellwand ask yard --answer-by 2026-10-01 --from \"A. Auditor, Boatyard Lane 1\""
        })
final class AskCommand implements Callable<Integer> {
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
            names = "--with-results",
            description = "Says too what the readings came to; without it the letter says nothing of them.")
    private boolean withResults;

    @Option(names = "--answer-by", paramLabel = "DATE", description = "Asks for an answer by this day (default: none).")
    private Optional<String> answerBy = Optional.empty();

    @Option(
            names = "--dated",
            paramLabel = "DATE",
            description = "Prints this date, as 2026-09-01 (default: none, so that same inputs give same bytes).")
    private Optional<String> dated = Optional.empty();

    @Option(names = "--from", paramLabel = "TEXT", description = "Who signs (default: a line is left for it).")
    private Optional<String> from = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the letters go, replacing earlier ones that nobody changed since"
                    + " (default: letters/ in FOLDER).")
    private Optional<Path> out = Optional.empty();

    AskCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Integer call() throws Exception {
        DateOption.check(spec, "--answer-by", answerBy);
        DateOption.check(spec, "--dated", dated);
        AuditedFolder.checkClaims(folder);
        Path place = out.orElse(folder.resolve("letters"));
        ReportFolder letters = ReportFolder.at(place, folder, OutputKind.LETTERS);
        FolderContents contents = FolderContents.read(folder);
        Scope scope = claims.scope();
        scope.check(contents.products(), contents.sessions());
        List<Product> asked = scope.products(contents.products()).stream()
                .filter(Letter::isNeeded)
                .toList();
        LetterNames names = LetterNames.of(contents.products());
        letters.write(withResults ? withResults(contents, scope, asked, names) : letters(asked, names));
        say(place, asked, names);
        return ExitCode.DONE;
    }

    private SortedMap<String, byte[]> letters(List<Product> asked, LetterNames names) throws Exception {
        SortedMap<String, byte[]> files = new TreeMap<>();
        TemplateWriter writer = writer();
        for (Product product : asked) {
            add(files, writer, names.of(product), Letter.model(product, options(writer), Map.of(), List.of()));
        }
        return files;
    }

    private SortedMap<String, byte[]> withResults(
            FolderContents contents, Scope scope, List<Product> asked, LetterNames names) throws Exception {
        Audit audit =
                progress.during("judging the claims ...", () -> contents.judged(scope, AuditOptions.DEFAULT_TRIALS));
        SortedMap<String, byte[]> files = new TreeMap<>();
        TemplateWriter writer = writer();
        for (ProductAudit product : audit.products()) {
            if (asked.contains(product.product())) {
                List<Object> cautions =
                        ResultModel.cautions(audit, product.product().name());
                Map<String, Object> model = Letter.model(
                        product.product(),
                        options(writer),
                        ResultModel.of(audit, product, writer.sentences()),
                        cautions);
                add(files, writer, names.of(product.product()), model);
            }
        }
        return files;
    }

    private TemplateWriter writer() throws Exception {
        return TemplateWriter.with(AuditedFolder.templates(folder));
    }

    private LetterOptions options(TemplateWriter writer) {
        return new LetterOptions(dated, answerBy, from, writer.sentences());
    }

    private static void add(Map<String, byte[]> files, TemplateWriter writer, String name, Map<String, Object> model)
            throws Exception {
        files.put(name + ".md", writer.write("letter.md.ftl", model));
        files.put(name + ".html", writer.write("letter.html.ftl", model));
    }

    private void say(Path place, List<Product> asked, LetterNames names) {
        PrintWriter err = spec.commandLine().getErr();
        err.println("letters written to " + place + "/");
        asked.forEach(product -> err.println(Plain.line(product.name()) + ": " + names.of(product) + ".md and .html"));
        if (asked.isEmpty()) {
            err.println("nothing is left open: there is nobody to ask");
        }
        err.flush();
    }
}
