package org.ellwand.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/** The curves of several sessions by their numbers: which stand in another session as well. */
final class SameCurves {
    private final Map<Numbers, List<Of>> curves = new HashMap<>();

    private SameCurves() {}

    /** A curve of a session. */
    record Of(String session, CurveReading reading) {}

    /** Numbers that are looked up by their values. */
    static final class Numbers {
        private final double[] values;
        private final int hash;

        Numbers(CurveReading reading) {
            this.values = Sheets.curve(reading).numbers();
            this.hash = Arrays.hashCode(values);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Numbers those && hash == those.hash && Arrays.equals(values, those.values);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    /** Of sessions as they were read. */
    static SameCurves in(List<Session> sessions) {
        SameCurves same = new SameCurves();
        for (Session session : sessions) {
            for (CurveReading reading : Copies.curves(session)) {
                same.curves
                        .computeIfAbsent(new Numbers(reading), k -> new ArrayList<>(1))
                        .add(new Of(session.id(), reading));
            }
        }
        return same;
    }

    /** The first curve of another session with the numbers of one, whose ear's open curve it is not: that may serve both. */
    Optional<Of> elsewhere(Session session, CurveReading reading) {
        return curves.getOrDefault(new Numbers(reading), List.of()).stream()
                .filter(of -> !of.session().equals(session.id()))
                .filter(of -> !isOneOpenEar(of.reading(), reading))
                .findFirst();
    }

    private static boolean isOneOpenEar(CurveReading one, CurveReading other) {
        return !one.isInPlace()
                && !other.isInPlace()
                && one.device().equals(other.device())
                && Copies.whose(one).equals(Copies.whose(other));
    }
}
