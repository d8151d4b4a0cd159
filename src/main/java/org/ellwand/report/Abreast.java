package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ellwand.input.InputException;

/** Work on several things at once, on all cores, that ends as if they had been done one after the other. */
final class Abreast {
    private Abreast() {}

    /** Makes one thing of another. It may share nothing with its like but what is immutable or safe for threads. */
    interface Work<T, R> {
        R of(T one) throws InputException;
    }

    /** What failed is thrown again by the one who asked, as it is: a pool would wrap it. */
    private record Outcome<R>(Optional<R> made, Optional<InputException> fault, Optional<RuntimeException> failure) {}

    /**
     * What came of each, in their order.
     *
     * @throws InputException of the first of them that is at fault; any other failure likewise
     */
    static <T, R> List<R> each(List<T> all, Work<T, R> work) throws InputException {
        List<Outcome<R>> outcomes =
                all.parallelStream().map(one -> outcome(one, work)).toList();
        List<R> made = new ArrayList<>();
        for (Outcome<R> outcome : outcomes) {
            if (outcome.fault().isPresent()) {
                throw outcome.fault().get();
            }
            if (outcome.failure().isPresent()) {
                throw outcome.failure().get();
            }
            outcome.made().ifPresent(made::add);
        }
        return made;
    }

    private static <T, R> Outcome<R> outcome(T one, Work<T, R> work) {
        try {
            return new Outcome<>(Optional.of(work.of(one)), Optional.empty(), Optional.empty());
        } catch (InputException e) {
            return new Outcome<>(Optional.empty(), Optional.of(e), Optional.empty());
        } catch (RuntimeException e) {
            return new Outcome<>(Optional.empty(), Optional.empty(), Optional.of(e));
        }
    }
}
