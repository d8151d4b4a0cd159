package org.ellwand.check;

import java.util.Optional;
import java.util.function.Supplier;

/** What is worked out by the first who asks, while others who ask wait for it. */
final class Once<T> {
    private final Supplier<T> work;
    private Optional<T> done = Optional.empty();

    Once(Supplier<T> work) {
        this.work = work;
    }

    synchronized T get() {
        if (done.isEmpty()) {
            done = Optional.of(work.get());
        }
        return done.orElseThrow();
    }
}
