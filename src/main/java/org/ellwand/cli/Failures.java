package org.ellwand.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ellwand.input.InputException;
import org.ellwand.input.Nearest;
import org.ellwand.input.Problem;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What went wrong, as lines on standard error and an exit code; never a stack trace, unless a developer asks for it. */
final class Failures {
    /** Environment variable: where it is set, what was not foreseen is printed with its stack trace. */
    static final String DEBUG = "ELLWAND_DEBUG";

    private static final long BYTES_A_MIB = 1 << 20;

    /** How the reader of the command line says that a word is none of some. */
    private static final Pattern ONE_OF =
            Pattern.compile("expected one of \\[(.*)] \\(case-\\w+\\) but was '(.*)'", Pattern.DOTALL);

    /** How it says that a word is no number, or neither true nor false. */
    private static final Pattern NO_SUCH =
            Pattern.compile("'(.*)' is not an? (boolean|int|long|short)", Pattern.DOTALL);

    private final PrintWriter err;
    private final boolean debug;

    Failures(PrintWriter err, boolean debug) {
        this.err = err;
        this.debug = debug;
    }

    /** What a command threw. */
    int print(Throwable failure) {
        if (failure instanceof InputException input) {
            for (Problem problem : input.problems()) {
                line(problem.toString());
            }
            return ExitCode.BAD_INPUT;
        }
        if (failure instanceof UncheckedIOException wrapped && wrapped.getCause() != null) {
            return print(wrapped.getCause());
        }
        line(failure instanceof IOException io ? text(io) : unforeseen(failure));
        trace(failure);
        return ExitCode.FAILURE;
    }

    /** What somebody wrote on the command line and no command understands. */
    int printUsage(ParameterException wrong) {
        CommandLine command = wrong.getCommandLine();
        String name = command.getCommandSpec().qualifiedName();
        line(name + ": " + said(wrong));
        line(name + " --help shows what is accepted");
        return ExitCode.BAD_INPUT;
    }

    private static String said(ParameterException wrong) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            return unknown(unmatched);
        }
        return wrong.getCause() instanceof TypeConversionException fault && wrong.getArgSpec() != null
                ? named(wrong.getArgSpec()) + " takes " + taken(String.valueOf(fault.getMessage()))
                : String.valueOf(wrong.getMessage());
    }

    /** What an option takes, as a sentence goes on after "takes". */
    private static String taken(String fault) {
        Matcher names = ONE_OF.matcher(fault);
        if (names.matches()) {
            String before = names.group(1);
            int last = before.lastIndexOf(", ");
            String listed = last < 0 ? before : before.substring(0, last) + " or " + before.substring(last + 2);
            return listed + ", not '" + names.group(2) + "'";
        }
        Matcher kind = NO_SUCH.matcher(fault);
        if (kind.matches()) {
            String wanted = kind.group(2).equals("boolean") ? "true or false" : "a whole number";
            return wanted + ", not '" + kind.group(1) + "'";
        }
        return fault;
    }

    private static String named(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String unknown(UnmatchedArgumentException wrong) {
        CommandLine command = wrong.getCommandLine();
        String word = wrong.getUnmatched().get(0);
        if (word.startsWith("-")) {
            String option = word.replaceFirst("=.*", "");
            return "unknown option " + option
                    + Nearest.hint(option, command.getCommandSpec().optionsMap().keySet());
        }
        Set<String> commands = command.getSubcommands().keySet();
        return commands.isEmpty()
                ? "'" + word + "' is one word too many"
                : "unknown command " + word + Nearest.hint(word, commands);
    }

    private void trace(Throwable failure) {
        if (debug) {
            failure.printStackTrace(err);
        }
        err.flush();
    }

    /** One line, whatever was in the input: a terminal is not to be steered by a file's content. */
    private void line(String text) {
        err.println(Plain.line(text));
        err.flush();
    }

    private static String text(IOException failure) {
        if (failure instanceof FileSystemException file && file.getFile() != null) {
            return file.getFile() + ": " + why(file);
        }
        String message = failure.getMessage();
        return "ellwand: " + (message == null ? failure.getClass().getSimpleName() : message);
    }

    private static String why(FileSystemException failure) {
        if (failure instanceof NoSuchFileException) {
            return "no such file";
        }
        if (failure instanceof AccessDeniedException) {
            return "no permission";
        }
        String reason = failure.getReason();
        return reason == null ? failure.getClass().getSimpleName() : reason;
    }

    private String unforeseen(Throwable failure) {
        if (failure instanceof OutOfMemoryError) {
            long hadMib = Runtime.getRuntime().maxMemory() / BYTES_A_MIB;
            String twice = "-Xmx" + 2 * hadMib + "m";
            return "ellwand: not enough memory, it had " + hadMib + " MiB; ELLWAND_JAVA_OPTIONS=" + twice
                    + " in the environment of target/ellwand, or java " + twice
                    + " -jar ellwand.jar, gives it twice as much";
        }
        String hint = debug ? "" : "; with " + DEBUG + "=1 in the environment it says where";
        return "ellwand: a fault of the program: " + failure + hint;
    }
}
