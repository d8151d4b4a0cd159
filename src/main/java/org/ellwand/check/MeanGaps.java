package org.ellwand.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ellwand.amount.Amount;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;

/**
 * By how much the settings of a product differ on the mean of a session, all its ears and units together: worked out once, so
 * that each of many units of another session is held against it at no cost.
 */
final class MeanGaps {
    private final String session;
    private final Map<Alike, Mean> means = new HashMap<>();

    /** What gaps of two sessions have in common that are held against each other: the same kind of sound, at the same level. */
    private record Alike(
            Optional<String> device,
            Optional<String> firmware,
            Optional<String> fit,
            String kind,
            List<Amount> levels,
            String first,
            String second) {}

    private static final class Mean {
        private double sumDb;
        private int count;
    }

    private MeanGaps(String session) {
        this.session = session;
    }

    static MeanGaps in(Session session) {
        MeanGaps gaps = new MeanGaps(session.id());
        Sheets.grouped(Sheets.inPlace(session), SettingGap.SETTING)
                .forEach((insertion, readings) ->
                        SettingGap.of(insertion, readings, Sheets::curve).forEach(gap -> gaps.add(session, gap)));
        return gaps;
    }

    /** The id of the session. */
    String session() {
        return session;
    }

    private void add(Session session, SettingGap gap) {
        alike(session, gap).ifPresent(alike -> {
            Mean mean = means.computeIfAbsent(alike, k -> new Mean());
            mean.sumDb += gap.db();
            mean.count++;
        });
    }

    /**
     * The mean of the gaps like one of another session; empty where there is none.
     *
     * @param session of that gap
     */
    OptionalDouble like(Session session, SettingGap gap) {
        return alike(session, gap).map(means::get).stream()
                .mapToDouble(mean -> mean.sumDb / mean.count)
                .findFirst();
    }

    private static Optional<Alike> alike(Session session, SettingGap gap) {
        Conditions of = gap.insertion();
        Optional<Stimulus> sound = session.stimulusOf(of);
        return sound.map(s -> new Alike(
                of.get("device"), of.get("firmware"), of.get("fit"), s.kind(), s.levels(), gap.first(), gap.second()));
    }
}
