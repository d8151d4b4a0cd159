package org.ellwand.check;

import java.util.List;
import java.util.stream.IntStream;
import org.ellwand.measurement.Session;

/** The sessions of a folder, backgrounds subtracted. What checks of the others ask of each is put together once for all. */
final class AllSessions {
    private final List<Session> all;
    private final List<Once<MeanGaps>> gaps;
    private final Once<SameCurves> same;

    /**
     * @param all with backgrounds subtracted
     * @param asRead the same sessions as they were read
     */
    AllSessions(List<Session> all, List<Session> asRead) {
        this.all = List.copyOf(all);
        List<Session> read = List.copyOf(asRead);
        same = new Once<>(() -> SameCurves.in(read));
        gaps = this.all.stream().map(s -> new Once<>(() -> MeanGaps.in(s))).toList();
    }

    List<Session> all() {
        return all;
    }

    /** The curves of all sessions as they were read. */
    SameCurves sameCurves() {
        return same.get();
    }

    /** Of all sessions but one. */
    List<MeanGaps> gapsElsewhere(Session but) {
        return IntStream.range(0, all.size())
                .filter(s -> !all.get(s).equals(but))
                .mapToObj(s -> gaps.get(s).get())
                .toList();
    }
}
