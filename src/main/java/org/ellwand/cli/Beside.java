package org.ellwand.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.ellwand.input.InputException;

/** Work done beside other work. It keeps no program from ending. */
final class Beside<T> {
    private final FutureTask<T> task;

    private Beside(FutureTask<T> task) {
        this.task = task;
    }

    static <T> Beside<T> begin(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(task, "beside");
        thread.setDaemon(true);
        thread.start();
        return new Beside<>(task);
    }

    /**
     * What came of it, waiting where it is not done.
     *
     * @throws InputException where the work found input to be at fault
     * @throws IOException where it met a failure of the machine; what else it threw is thrown as it is
     */
    T get() throws InputException, IOException {
        try {
            return task.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof InputException fault) {
                throw fault;
            }
            if (e.getCause() instanceof IOException failure) {
                throw failure;
            }
            if (e.getCause() instanceof RuntimeException unforeseen) {
                throw unforeseen;
            }
            if (e.getCause() instanceof Error fatal) {
                throw fatal;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException();
        }
    }
}
