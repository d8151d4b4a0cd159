package org.ellwand.report;

import java.io.IOException;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Steps on files that the end of the program, as by Ctrl-C, does not cut in two. Where it comes, the step at hand is done
 * to its end, none follows, and what was begun is cleared away.
 */
final class Uninterrupted implements AutoCloseable {
    private final ReentrantLock turn = new ReentrantLock();
    private final Thread atEnd;

    /** @param clear what to do where the program ends before {@link #close()} */
    Uninterrupted(Runnable clear) {
        atEnd = new Thread(
                () -> {
                    // Never given back: whoever waits for it waits until the program is gone.
                    turn.lock();
                    clear.run();
                },
                "clear");
        Runtime.getRuntime().addShutdownHook(atEnd);
    }

    /** A step on files. */
    interface Step {
        void take() throws IOException;
    }

    void step(Step step) throws IOException {
        turn.lock();
        try {
            step.take();
        } finally {
            turn.unlock();
        }
    }

    @Override
    public void close() {
        try {
            Runtime.getRuntime().removeShutdownHook(atEnd);
        } catch (IllegalStateException e) {
            // The program is ending already.
        }
    }
}
