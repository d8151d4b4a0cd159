package org.ellwand.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * One setting under the name of another. Two settings differ by much the same in every insertion, and from ear to ear they
 * do not change places: an insertion in which the second is the stronger one by what the first is in the others was
 * written down the wrong way round. Where the session says in which order its settings come, {@code settings weakest
 * first}, the mean attenuation may not fall along it. Compared is the mean level from 125 Hz to 8 kHz under one sound; the fit cancels
 * where settings are switched in place. (1 dB at least, and beyond the declared errors: common practice, no source.) Accuses fewer than
 * 1 in 1000 sound sessions.
 */
final class SettingOrder implements DataCheck {
    /** Of an insertion that lies the other way round than the others. */
    static final String SWAPPED = "settings-swapped";

    /** Of a session that lies the other way round than another, its parameter {@code session}. */
    static final String DIFFERENT = "settings-differ";

    /** Of a session that lies the other way round than it says itself. */
    static final String OUT_OF_ORDER = "settings-out-of-order";

    private static final int FEWEST = 3;

    @Override
    public String name() {
        return "order of settings";
    }

    @Override
    public String needs() {
        return "two settings in three insertions, or 'settings weakest first' in the session";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Map<SettingGap.State, List<SettingGap>> gaps = new LinkedHashMap<>();
        Sheets.grouped(material.inPlace(), SettingGap.SETTING)
                .forEach((insertion, readings) -> SettingGap.of(insertion, readings, material::curve)
                        .forEach(gap -> gaps.computeIfAbsent(gap.state(), k -> new ArrayList<>())
                                .add(gap)));
        gaps.values().stream().filter(group -> group.size() >= FEWEST).forEach(group -> among(tally, session, group));
        List<String> order = session.chain().weakestFirst();
        gaps.values().forEach(group -> ordered(tally, session, group, order));
        elsewhere(tally, material, gaps);
        return tally.done();
    }

    /** An insertion that lies nearer to the others turned round than to the others. */
    private static void among(Tally tally, Session session, List<SettingGap> group) {
        tally.looked();
        double median = Curves.median(group.stream().map(SettingGap::db).toList());
        group.stream()
                .filter(gap -> Math.signum(gap.db()) != Math.signum(median)
                        && Math.min(Math.abs(median), Math.abs(gap.db())) > gap.thresholdDb(session))
                .forEach(gap -> add(tally, session, gap, gap.insertion(), turned(SWAPPED, gap, gap.db(), median)));
    }

    private static void ordered(Tally tally, Session session, List<SettingGap> group, List<String> order) {
        SettingGap any = group.get(0);
        int first = order.indexOf(any.first());
        int second = order.indexOf(any.second());
        if (first < 0 || second < 0) {
            return;
        }
        tally.looked();
        double mean = group.stream().mapToDouble(SettingGap::db).average().orElse(0);
        // The weaker setting is the louder one.
        double wrong = first < second ? -mean : mean;
        double threshold = any.thresholdDb(session);
        if (wrong > threshold) {
            Conditions all = any.insertion().without(Set.of("insertion"));
            String weaker = first < second ? any.first() : any.second();
            String stronger = first < second ? any.second() : any.first();
            tally.add(
                    all,
                    List.of(),
                    Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(wrong, threshold, "dB"),
                    Remark.of(OUT_OF_ORDER)
                            .with("weaker", weaker)
                            .with("stronger", stronger)
                            .with("wrong", wrong)
                            .with("threshold", threshold));
        }
    }

    /** Another ear or session of the same product under the same sound has the two settings the other way round. */
    private static void elsewhere(Tally tally, Material material, Map<SettingGap.State, List<SettingGap>> here) {
        List<MeanGaps> others = here.isEmpty() ? List.of() : material.gapsElsewhere();
        for (List<SettingGap> group : here.values()) {
            SettingGap any = group.get(0);
            double mean = group.stream().mapToDouble(SettingGap::db).average().orElse(0);
            if (group.size() >= FEWEST && group.stream().anyMatch(g -> Math.signum(g.db()) != Math.signum(mean))) {
                continue; // An insertion that is turned round is told by itself.
            }
            for (MeanGaps other : others) {
                double there = other.like(material.session(), any).orElse(0);
                boolean turned = Math.signum(mean) != Math.signum(there)
                        && Math.min(Math.abs(mean), Math.abs(there)) > any.thresholdDb(material.session());
                if (turned) {
                    Conditions all = any.insertion().without(Set.of("insertion"));
                    Remark remark = turned(DIFFERENT, any, mean, there).with("session", other.session());
                    add(tally, material.session(), any, all, remark);
                }
            }
        }
    }

    private static void add(Tally tally, Session session, SettingGap gap, Conditions of, Remark remark) {
        tally.add(
                of,
                List.of(),
                Errs.EITHER,
                Consequence.UNUSABLE,
                new Measure(gap.db(), gap.thresholdDb(session), "dB"),
                remark);
    }

    /** Which setting is the louder one here, and by how much the other one is elsewhere. */
    private static Remark turned(String key, SettingGap gap, double here, double elsewhere) {
        boolean first = here > 0;
        return Remark.of(key)
                .with("louder", first ? gap.first() : gap.second())
                .with("softer", first ? gap.second() : gap.first())
                .with("here", Math.abs(here))
                .with("elsewhere", Math.abs(elsewhere));
    }
}
