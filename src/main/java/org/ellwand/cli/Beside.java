package org.ellwand.cli;

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
     * @throws IllegalStateException where it failed otherwise, with the failure as cause
     */
    T get() throws InputException {
        try {
            return task.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof InputException fault) {
                throw fault;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException();
        }
    }
}
