package org.ellwand.quantity;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.ellwand.acoustics.TraceNumber;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.NumberReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Trace;
import org.ellwand.pairing.Source;
import org.ellwand.words.Remark;

/**
 * Numbers read off the traces of sessions.
 *
 * @param suited whether a trace is of the kind that is looked for
 * @param number what is read off it
 * @param factor from the number's unit to the one its causes are declared in
 * @param movedBy unit of the causes that move the number
 */
record TraceSource(Predicate<Trace> suited, Reader number, double factor, Optional<Unit> movedBy) implements Source {
    /** Reads a number off a trace. */
    interface Reader {
        /** The number; absent, with its reason told, where there is none. */
        Optional<TraceNumber> of(Session session, Trace trace, Consumer<Remark> dropped);
    }

    @Override
    public void collect(
            Session session, Predicate<Conditions> wanted, Consumer<? super Reading> found, Consumer<Remark> dropped) {
        session.traces().stream()
                .filter(suited)
                .filter(trace -> wanted.test(trace.conditions()))
                .forEach(trace -> number.of(session, trace, dropped).ifPresent(n -> add(trace, n, found, dropped)));
    }

    private void add(Trace trace, TraceNumber read, Consumer<? super Reading> found, Consumer<Remark> dropped) {
        read.reason()
                .ifPresent(why -> dropped.accept(
                        Remark.of(why.key()).with("file", trace.place().file())));
        read.value()
                .ifPresent(value ->
                        found.accept(new NumberReading(trace.named(), factor * value, movedBy, trace.place())));
    }
}
