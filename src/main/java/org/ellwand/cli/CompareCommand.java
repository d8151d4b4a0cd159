package org.ellwand.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.ellwand.amount.Amount;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.AuditRecord;
import org.ellwand.audit.AuditRecordReader;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Scope;
import org.ellwand.compare.Change;
import org.ellwand.compare.ClaimComparison;
import org.ellwand.compare.Comparer;
import org.ellwand.compare.Comparison;
import org.ellwand.compare.ComparisonJson;
import org.ellwand.compare.ComparisonModel;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.report.OutputKind;
import org.ellwand.report.ReportFolder;
import org.ellwand.report.TemplateWriter;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Holds a second audit against a first. */
@Command(
        name = "compare",
        description = "Holds two audits, products, firmwares or editions against each other.",
        footer = {
            "",
            "Example: what the new firmware changed, in one folder; and a build that fails where a verdict got worse:",
            "  ellwand compare yard yard --first-firmware 2.0 --second-firmware 2.1 \\",
            "    --fail-on worse"
        })
final class CompareCommand implements Callable<Integer> {
    private static final int LARGEST_RECORD = 200_000_000;

    private final Progress progress;
    private final Map<Path, FolderContents> read = new HashMap<>();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "FIRST", description = "An audit.json, or a folder to audit.")
    private Path first = Path.of("");

    @Parameters(index = "1", paramLabel = "SECOND", description = "What is held against it; the same folder may be.")
    private Path second = Path.of("");

    @ArgGroup(exclusive = false, heading = "%nNarrowing the first (of a folder):%n")
    private FirstScope firstScope = new FirstScope();

    @ArgGroup(exclusive = false, heading = "%nNarrowing the second (of a folder):%n")
    private SecondScope secondScope = new SecondScope();

    @Option(
            names = "--margin",
            paramLabel = "AMOUNT",
            description = "Two values count as the same within it, as 1 dB (default: not asked).")
    private Optional<String> margin = Optional.empty();

    @Option(
            names = "--fail-on",
            paramLabel = "worse",
            description = "Ends with exit code 1 where a verdict got worse, or what was tested is not any more.")
    private Optional<String> failOn = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the comparison goes, replacing an earlier one that nobody changed since"
                    + " (default: comparison/ here).")
    private Path out = Path.of("comparison");

    @Mixin
    private TrialsOption trials = new TrialsOption();

    @Option(names = "--dated", paramLabel = "DATE", description = "Prints this date, as 2026-09-01 (default: none).")
    private Optional<String> dated = Optional.empty();

    /** Narrows the first. */
    @SuppressWarnings("UnusedVariable") // picocli fills them
    static final class FirstScope {
        @Option(names = "--first-product", paramLabel = "NAME", description = "Only this product.")
        private Optional<String> product = Optional.empty();

        @Option(names = "--first-edition", paramLabel = "ID", description = "Only claims of this edition.")
        private Optional<String> edition = Optional.empty();

        @Option(names = "--first-firmware", paramLabel = "VERSION", description = "Only what had this firmware.")
        private Optional<String> firmware = Optional.empty();

        Scope scope() {
            return scopeOf(product, edition, firmware);
        }
    }

    /** Narrows the second. */
    @SuppressWarnings("UnusedVariable") // picocli fills them
    static final class SecondScope {
        @Option(names = "--second-product", paramLabel = "NAME", description = "Only this product.")
        private Optional<String> product = Optional.empty();

        @Option(names = "--second-edition", paramLabel = "ID", description = "Only claims of this edition.")
        private Optional<String> edition = Optional.empty();

        @Option(names = "--second-firmware", paramLabel = "VERSION", description = "Only what had this firmware.")
        private Optional<String> firmware = Optional.empty();

        Scope scope() {
            return scopeOf(product, edition, firmware);
        }
    }

    CompareCommand(Progress progress) {
        this.progress = progress;
    }

    private static Scope scopeOf(Optional<String> product, Optional<String> edition, Optional<String> firmware) {
        return new Scope(set(product), set(edition), set(firmware), Set.of());
    }

    private static Set<String> set(Optional<String> one) {
        return one.map(Set::of).orElse(Set.of());
    }

    @Override
    public Integer call() throws Exception {
        DateOption.check(spec, "--dated", dated);
        Optional<Amount> within = margin();
        if (failOn.isPresent() && !failOn.get().equals("worse")) {
            throw new ParameterException(spec.commandLine(), "--fail-on takes worse, not '" + failOn.get() + "'");
        }
        check(first);
        check(second);
        ReportFolder place = ReportFolder.at(out, Path.of(""), OutputKind.COMPARISON);
        Comparer comparer = new Comparer(within);
        Comparison comparison = progress.during(
                "comparing ...",
                () -> comparer.compare(
                        record(first, firstScope.scope(), "--first-"),
                        record(second, secondScope.scope(), "--second-")));
        read.clear();
        refuseMargin(comparer.unfitting(comparison));
        place.write(files(comparison));
        say(comparison);
        return failOn.isPresent() && comparison.isWorse() ? ExitCode.CONDITION_MET : ExitCode.DONE;
    }

    /** Both are looked at before the first is judged, which takes time. */
    private static void check(Path from) throws InputException {
        if (!Files.exists(from)) {
            throw new InputException(Place.ofFile(from.toString()), "no such record or folder");
        }
        if (!Files.isRegularFile(from)) {
            AuditedFolder.check(from);
        }
    }

    private Optional<Amount> margin() {
        if (margin.isEmpty()) {
            return Optional.empty();
        }
        try {
            Amount amount = Phrases.amount(margin.get());
            if (amount.value() > 0) {
                return Optional.of(amount);
            }
        } catch (PhraseException e) {
            throw new ParameterException(spec.commandLine(), "--margin: " + e.getMessage());
        }
        throw new ParameterException(spec.commandLine(), "--margin takes an amount above 0, as 1 dB");
    }

    /** A margin that no claim can use would be printed and not applied. */
    private void refuseMargin(Set<String> units) {
        if (!units.isEmpty()) {
            String all = units.stream()
                    .map(unit -> unit.isEmpty() ? "plain numbers" : unit)
                    .collect(Collectors.joining(", "));
            throw new ParameterException(
                    spec.commandLine(),
                    "--margin " + margin.orElse("") + " fits no claim that both have: they are in " + all);
        }
    }

    /** @param options how those begin that narrow this side */
    private AuditRecord record(Path from, Scope scope, String options) throws InputException, IOException {
        if (Files.isRegularFile(from)) {
            if (!scope.equals(Scope.all())) {
                throw new InputException(
                        Place.ofFile(from.toString()), "is a record and cannot be narrowed: give the folder it is of");
            }
            if (Files.size(from) > LARGEST_RECORD) {
                throw new InputException(Place.ofFile(from.toString()), "longer than " + LARGEST_RECORD + " bytes");
            }
            return AuditRecordReader.read(Files.readAllBytes(from), from.toString());
        }
        FolderContents contents = contents(from);
        scope.check(contents.products(), contents.sessions(), options);
        return AuditRecordReader.read(AuditJson.write(contents.judged(scope, trials.number())), from.toString());
    }

    /** One folder held against itself is read once. */
    private FolderContents contents(Path from) throws InputException, IOException {
        Path place = from.toRealPath();
        FolderContents contents = read.get(place);
        if (contents == null) {
            contents = FolderContents.read(from);
            if (isOneFolder()) {
                read.put(place, contents);
            }
        }
        return contents;
    }

    private boolean isOneFolder() throws IOException {
        return first.toRealPath().equals(second.toRealPath());
    }

    private SortedMap<String, byte[]> files(Comparison comparison) throws InputException, IOException {
        ComparisonModel.Names names = new ComparisonModel.Names(
                name(first, firstScope.scope()),
                name(second, secondScope.scope()),
                margin.orElse(""),
                dated.orElse(""),
                !firstScope.scope().equals(secondScope.scope()));
        Map<String, Object> model = ComparisonModel.of(comparison, names);
        TemplateWriter writer =
                TemplateWriter.with(Files.isDirectory(second) ? AuditedFolder.templates(second) : Optional.empty());
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("comparison.md", writer.write("comparison.md.ftl", model));
        files.put("comparison.html", writer.write("comparison.html.ftl", model));
        files.put("correction.md", writer.write("correction.md.ftl", model));
        files.put("comparison.json", ComparisonJson.write(model));
        return files;
    }

    /** Of one folder what tells the sides apart says enough, and is what a reader of a correction can understand. */
    private String name(Path from, Scope scope) throws IOException {
        String narrowed = scope.words();
        if (narrowed.isEmpty()) {
            return from.toString();
        }
        boolean both =
                !firstScope.scope().equals(Scope.all()) && !secondScope.scope().equals(Scope.all());
        return both && isOneFolder() ? narrowed : from + " (" + narrowed + ")";
    }

    private void say(Comparison comparison) {
        PrintWriter err = spec.commandLine().getErr();
        err.println("comparison written to " + out + "/ (comparison.html)");
        if (!comparison.sameNames().isEmpty()) {
            err.println("a sitting of the same name is in both, and no sheet: taken for one sitting ("
                    + Plain.line(String.join(", ", comparison.sameNames())) + ")");
        }
        for (Comparison.OfProduct product : comparison.products()) {
            for (ClaimComparison claim : product.claims()) {
                boolean moved = claim.deciding()
                        .filter(cell -> cell.shift().isMoreThanNoise(product.confidence()))
                        .isPresent();
                if (claim.change() != Change.SAME || moved) {
                    err.println(
                            Plain.line(product.second() + ", " + claim.second().id()) + ": "
                                    + claim.first().verdict().word() + " -> "
                                    + claim.second().verdict().word() + (moved ? ", shifted by more than noise" : ""));
                }
            }
        }
        err.flush();
    }
}
