package org.ellwand.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
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
    /** Differences of two settings below this say nothing of their order, dB. */
    private static final double LEAST_DB = 1;

    /** Standard deviations of a difference of two readings. */
    private static final double SCATTER = 4.5 * Math.sqrt(2);

    private static final int FEWEST = 3;
    private static final Set<String> SETTING = Set.of("setting", "take");
    private static final Set<String> INSERTION = Set.of("insertion");

    @Override
    public String name() {
        return "order of settings";
    }

    @Override
    public String needs() {
        return "two settings in three insertions, or 'settings weakest first' in the session";
    }

    /**
     * By how much the first of two settings is louder than the second, in one insertion.
     *
     * @param bands that this is the mean over
     */
    private record Gap(String first, String second, Conditions insertion, double db, Set<Band> bands) {
        State state() {
            return new State(insertion.without(INSERTION), first, second);
        }

        /** A smaller difference says nothing of the order. */
        double thresholdDb(Session session) {
            return Math.max(LEAST_DB, SCATTER * scatterDb(session, bands));
        }
    }

    /** What gaps have in common that are held against each other. */
    private record State(Conditions conditions, String first, String second) {}

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Map<State, List<Gap>> gaps = new LinkedHashMap<>();
        Sheets.grouped(material.inPlace(), SETTING)
                .forEach((insertion, readings) -> gaps(insertion, readings)
                        .forEach(gap -> gaps.computeIfAbsent(gap.state(), k -> new ArrayList<>())
                                .add(gap)));
        gaps.values().stream().filter(group -> group.size() >= FEWEST).forEach(group -> among(tally, session, group));
        List<String> order = session.chain().weakestFirst();
        gaps.values().forEach(group -> ordered(tally, session, group, order));
        elsewhere(tally, material, gaps);
        return tally.done();
    }

    private static List<Gap> gaps(Conditions insertion, List<CurveReading> readings) {
        Map<String, List<CurveReading>> settings = new TreeMap<>();
        readings.forEach(r -> r.get("setting")
                .ifPresent(
                        s -> settings.computeIfAbsent(s, k -> new ArrayList<>()).add(r)));
        List<String> names = List.copyOf(settings.keySet());
        List<NavigableMap<Band, Double>> levels =
                settings.values().stream().map(Sheets::meanOf).toList();
        List<Gap> gaps = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (int j = i + 1; j < names.size(); j++) {
                var difference = Curves.between(Curves.less(levels.get(i), levels.get(j)), 125, 8000);
                if (!difference.isEmpty()) {
                    double db = Curves.average(difference);
                    gaps.add(new Gap(names.get(i), names.get(j), insertion, db, difference.keySet()));
                }
            }
        }
        return gaps;
    }

    private static double scatterDb(Session session, Set<Band> bands) {
        double reading = Sheets.meanReadingDb(session, bands);
        return session.settingsSwitchedInPlace()
                ? reading
                : Math.hypot(reading, Sheets.meanInsertionDb(session, bands));
    }

    /** An insertion that lies nearer to the others turned round than to the others. */
    private static void among(Tally tally, Session session, List<Gap> group) {
        tally.looked();
        double median = Curves.median(group.stream().map(Gap::db).toList());
        group.stream()
                .filter(gap -> Math.signum(gap.db()) != Math.signum(median)
                        && Math.min(Math.abs(median), Math.abs(gap.db())) > gap.thresholdDb(session))
                .forEach(gap ->
                        add(tally, session, gap, gap.insertion(), turned("settings-swapped", gap, gap.db(), median)));
    }

    private static void ordered(Tally tally, Session session, List<Gap> group, List<String> order) {
        Gap any = group.get(0);
        int first = order.indexOf(any.first());
        int second = order.indexOf(any.second());
        if (first < 0 || second < 0) {
            return;
        }
        tally.looked();
        double mean = group.stream().mapToDouble(Gap::db).average().orElse(0);
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
                    Remark.of("settings-out-of-order")
                            .with("weaker", weaker)
                            .with("stronger", stronger)
                            .with("wrong", wrong)
                            .with("threshold", threshold));
        }
    }

    /** Another ear or session of the same product under the same sound has the two settings the other way round. */
    private static void elsewhere(Tally tally, Material material, Map<State, List<Gap>> here) {
        List<Session> others = material.all().stream()
                .filter(other -> !other.equals(material.session()))
                .toList();
        for (List<Gap> group : others.isEmpty() ? List.<List<Gap>>of() : here.values()) {
            Gap any = group.get(0);
            double mean = group.stream().mapToDouble(Gap::db).average().orElse(0);
            if (group.size() >= FEWEST && group.stream().anyMatch(g -> Math.signum(g.db()) != Math.signum(mean))) {
                continue; // An insertion that is turned round is told by itself.
            }
            for (Session other : others) {
                double there = meanGap(other, material.session(), any);
                boolean turned = Math.signum(mean) != Math.signum(there)
                        && Math.min(Math.abs(mean), Math.abs(there)) > any.thresholdDb(material.session());
                if (turned) {
                    Conditions all = any.insertion().without(Set.of("insertion"));
                    Remark remark = turned("settings-differ", any, mean, there).with("session", other.id());
                    add(tally, material.session(), any, all, remark);
                }
            }
        }
    }

    /** The mean difference of the same settings of the same product under the same kind of sound at the same level. */
    private static double meanGap(Session other, Session session, Gap like) {
        Optional<String> device = like.insertion().get("device");
        var wanted = session.stimulusOf(like.insertion());
        List<Double> gaps = new ArrayList<>();
        Sheets.grouped(Sheets.inPlace(other), SETTING).forEach((insertion, readings) -> {
            boolean sameSound = wanted.isPresent()
                    && other.stimulusOf(insertion)
                            .filter(s -> s.kind().equals(wanted.get().kind())
                                    && s.levels().equals(wanted.get().levels()))
                            .isPresent();
            if (sameSound
                    && insertion.get("device").equals(device)
                    && insertion.get("firmware").equals(like.insertion().get("firmware"))
                    && insertion.get("fit").equals(like.insertion().get("fit"))) {
                gaps(insertion, readings).stream()
                        .filter(g ->
                                g.first().equals(like.first()) && g.second().equals(like.second()))
                        .forEach(g -> gaps.add(g.db()));
            }
        });
        return gaps.stream().mapToDouble(d -> d).average().orElse(0);
    }

    private static void add(Tally tally, Session session, Gap gap, Conditions of, Remark remark) {
        tally.add(
                of,
                List.of(),
                Errs.EITHER,
                Consequence.UNUSABLE,
                new Measure(gap.db(), gap.thresholdDb(session), "dB"),
                remark);
    }

    /** Which setting is the louder one here, and by how much the other one is elsewhere. */
    private static Remark turned(String key, Gap gap, double here, double elsewhere) {
        boolean first = here > 0;
        return Remark.of(key)
                .with("louder", first ? gap.first() : gap.second())
                .with("softer", first ? gap.second() : gap.first())
                .with("here", Math.abs(here))
                .with("elsewhere", Math.abs(elsewhere));
    }
}
