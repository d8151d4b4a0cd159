package org.ellwand.check;

import java.util.List;
import java.util.stream.IntStream;
import org.ellwand.measurement.Session;

/** The sessions of a folder, backgrounds subtracted. What checks of the others ask of each is put together once for all. */
final class AllSessions {
    private final List<Session> all;
    private final List<Once<MeanGaps>> gaps;

    AllSessions(List<Session> all) {
        this.all = List.copyOf(all);
        gaps = this.all.stream().map(s -> new Once<>(() -> MeanGaps.in(s))).toList();
    }

    List<Session> all() {
        return all;
    }

    /** Of all sessions but one. */
    List<MeanGaps> gapsElsewhere(Session but) {
        return IntStream.range(0, all.size())
                .filter(s -> !all.get(s).equals(but))
                .mapToObj(s -> gaps.get(s).get())
                .toList();
    }
}
