package org.ellwand.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** One line for work that takes over a second, with the seconds so far, on a terminal only; gone when the work is done or interrupted. */
final class Progress {
    private static final long SECOND_MS = 1000;
    private static final String CLEAR = "\r\u001B[K";

    private final PrintWriter err;
    private final boolean terminal;

    Progress(PrintWriter err, boolean terminal) {
        this.err = err;
        this.terminal = terminal;
    }

    /** Whether standard error is a terminal, by the name of the open file; where the system tells none, it is not. */
    static boolean errIsTerminal() {
        try {
            String name = Path.of("/dev/fd/2").toRealPath().toString();
            return name.startsWith("/dev/pts/") || name.startsWith("/dev/tty");
        } catch (IOException e) {
            return false; // a pipe has no path
        }
    }

    /** Does the work; says so where it takes long. */
    <T> T during(String text, Callable<T> work) throws Exception {
        if (!terminal) {
            return work.call();
        }
        ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(Progress::daemon);
        Line line = new Line(text);
        Thread interrupted = new Thread(line::clear, "progress ends");
        Runtime.getRuntime().addShutdownHook(interrupted);
        var each = clock.scheduleAtFixedRate(line::show, SECOND_MS, SECOND_MS, TimeUnit.MILLISECONDS);
        try {
            return work.call();
        } finally {
            each.cancel(false);
            clock.shutdownNow();
            line.clear();
            forget(interrupted);
        }
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The program is ending: the hook runs, and finds nothing left to clear.
        }
    }

    /** What stands on the terminal. */
    private final class Line {
        private final String text;
        private int seconds;
        private boolean over;

        Line(String text) {
            this.text = text;
        }

        synchronized void show() {
            if (!over) {
                seconds++;
                print(CLEAR + text + " " + seconds + " s");
            }
        }

        /** Once and for all. */
        synchronized void clear() {
            if (!over && seconds > 0) {
                print(CLEAR);
            }
            over = true;
        }
    }

    private void print(String text) {
        err.print(text);
        err.flush();
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "progress");
        thread.setDaemon(true);
        return thread;
    }
}
