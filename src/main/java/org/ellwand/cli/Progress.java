package org.ellwand.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** One line for work that takes over a second, on a terminal only, and gone when the work is done. */
final class Progress {
    private static final long PATIENCE_MS = 1000;
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
        var line = clock.schedule(() -> show(text), PATIENCE_MS, TimeUnit.MILLISECONDS);
        try {
            return work.call();
        } finally {
            boolean shown = !line.cancel(false);
            clock.shutdown();
            if (shown) {
                show(CLEAR);
            }
        }
    }

    private void show(String text) {
        err.print(text);
        err.flush();
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "progress");
        thread.setDaemon(true);
        return thread;
    }
}
