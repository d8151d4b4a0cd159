package org.ellwand.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/** One command line that was run, with what it printed. */
record CommandLineRun(int exitCode, String out, String err) {
    static CommandLineRun of(List<Object> commands, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exitCode = Main.run(commands, new PrintWriter(out, true), new PrintWriter(err, true), args);
        return new CommandLineRun(exitCode, out.toString(), err.toString());
    }
}
