package org.ellwand.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.ellwand.claim.ClaimsSchema;
import org.ellwand.measurement.SessionSchema;
import org.ellwand.quantity.Quantities;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** Where the program starts. */
@Command(
        name = "ellwand",
        description = "Judges what makers claim about worn acoustic products by what was measured.",
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:a condition of --fail-on was met",
            "2:bad input or usage; nothing was written",
            "3:a failure of the program or the machine"
        },
        footer = {"", "Example: make a small example and judge it:", "  ellwand start yard", "  ellwand audit yard"})
@SuppressWarnings("UnusedVariable") // picocli reads the options
public final class Main implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "Shows this help.")
    private boolean help;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "Shows the version.")
    private boolean version;

    private Main() {}

    /**
     * Runs one command line and ends the virtual machine with its exit code: 0 done, 1 a condition of {@code --fail-on}
     * was met, 2 bad input or usage, 3 a failure of program or machine.
     *
     * @param args command, options and folders; {@code --help} lists them
     */
    public static void main(String[] args) {
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        Outlet out = new Outlet(new FileOutputStream(FileDescriptor.out));
        System.exit(run(commands(err), out, err, args));
    }

    /** Runs one command line; what standard output did not take is a failure of the machine, whatever the command says. */
    static int run(List<Object> commands, Outlet outlet, PrintWriter err, String... args) {
        PrintWriter out = new PrintWriter(outlet, true, StandardCharsets.UTF_8);
        int exitCode = run(commands, out, err, args);
        out.flush();
        return outlet.failure().map(failures(err)::print).orElse(exitCode);
    }

    private static Failures failures(PrintWriter err) {
        return new Failures(err, System.getenv(Failures.DEBUG) != null);
    }

    /** Every command there is. */
    static List<Object> commands(PrintWriter err) {
        Progress progress = new Progress(err, Progress.errIsTerminal());
        return List.of(
                new AuditCommand(new FolderSteps(), progress),
                new AskCommand(progress),
                new BandsCommand(progress),
                new CompareCommand(progress),
                new CompletionCommand(),
                new InspectCommand(progress),
                new ManualCommand(),
                new PlanCommand(progress),
                new SchemaCommand(Map.of(
                        "claims",
                        declared -> ClaimsSchema.text(Quantities.forms(), declared),
                        "session",
                        declared -> SessionSchema.text())),
                new StartCommand(Example.builtIn()),
                new StimulusCommand());
    }

    /** Runs one command line and gives its exit code. */
    static int run(List<Object> commands, PrintWriter out, PrintWriter err, String... args) {
        Failures failures = failures(err);
        CommandLine line = new CommandLine(new Main());
        asked(commands, args).forEach(line::addSubcommand);
        Argument.register(line);
        // After the commands are there: these reach down to them.
        line.setOut(Plain.over(out))
                .setErr(Plain.over(err))
                // What styles a help text would steer a terminal just as what stands in a file.
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setParameterExceptionHandler((wrong, ignored) -> failures.printUsage(wrong))
                .setExecutionExceptionHandler((failure, command, ignored) -> failures.print(failure))
                .setExpandAtFiles(false)
                .setAllowOptionsAsOptionParameters(false);
        try {
            return line.execute(args);
        } catch (Error fatal) {
            return failures.print(fatal);
        }
    }

    /**
     * The command that the first word names, alone where it is enough: what options each has is worked out anew at every start,
     * and takes as long as reading a small folder.
     */
    private static List<Object> asked(List<Object> commands, String... args) {
        return commands.stream()
                .filter(command -> args.length > 0 && !(command instanceof OfAllCommands))
                .filter(command ->
                        command.getClass().getAnnotation(Command.class).name().equals(args[0]))
                .findFirst()
                .map(List::of)
                .orElse(commands);
    }

    /** Without a command there is nothing to do. */
    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "a command is needed");
    }
}
