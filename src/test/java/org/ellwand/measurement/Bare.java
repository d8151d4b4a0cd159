package org.ellwand.measurement;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Invented sessions for tests that look at one kind of reading: whatever else a session may say is left unsaid. */
public final class Bare {
    private Bare() {}

    /**
     * Conditions written as {@code setting=flood, insertion=1}.
     *
     * @param said what holds where the text says nothing else
     */
    public static Conditions conditions(Map<String, String> said, String text) {
        Map<String, String> all = new LinkedHashMap<>(said);
        for (String part : text.split(",")) {
            String[] pair = part.strip().split("=");
            all.put(pair[0], pair[1]);
        }
        return Conditions.of(all);
    }

    public static Session ofTraces(String id, List<Trace> traces) {
        return session(id, traces, List.of());
    }

    public static Session ofFigures(String id, List<Figure> figures) {
        return session(id, List.of(), figures);
    }

    private static Session session(String id, List<Trace> traces, List<Figure> figures) {
        return new Session(
                id,
                "measurements/" + id + ".yaml",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                false,
                true,
                Set.of(),
                new Uncertainty.Declared(List.of(), false),
                List.of(),
                traces,
                List.of(),
                figures,
                List.of(),
                Chain.UNSTATED);
    }
}
