package org.ellwand.pairing;

import java.util.function.Consumer;
import java.util.function.Predicate;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.HarmonicReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/** Where a quantity takes the readings in place from: the curves of a session, its harmonics, its traces. */
public interface Source {
    /** The curves of a session. */
    Source CURVES = (session, wanted, found, dropped) ->
            session.readings().stream().filter(r -> wanted.test(r.conditions())).forEach(found);

    /** The harmonics of tones; different tones are no repeats. */
    Source HARMONICS = (session, wanted, found, dropped) -> session.harmonics().stream()
            .filter(r -> wanted.test(r.conditions()))
            .map(HarmonicReading::named)
            .forEach(found);

    /**
     * Hands over the wanted readings of a session.
     *
     * @param session whose readings are looked through
     * @param wanted whether a reading of these conditions is
     * @param found takes each wanted reading
     * @param dropped is told why a wanted one cannot be used
     */
    void collect(
            Session session, Predicate<Conditions> wanted, Consumer<? super Reading> found, Consumer<Remark> dropped);
}
