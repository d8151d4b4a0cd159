package org.ellwand.check;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ellwand.acoustics.Band;
import org.ellwand.amount.Amount;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.words.Remark;

/**
 * A microphone, amplifier or loudspeaker that no longer follows. The open ear is a linear path: 10 dB more outside are 10 dB
 * more inside. Where the open ear rises by less than {@link #SHARE} of what the sound rose by, in five third octaves side by
 * side, something compressed, and the open ear reads low, which hides attenuation. Where it rises by more than {@link #MOST}, a level is not
 * what was written down. (0.95 and 1.05: common practice, no source.) A
 * sound whose peak lies above the {@code overload} that the session states clips, whatever it reads. Accuses fewer than 1 in
 * 1000 sound sessions.
 */
final class Overload implements DataCheck {
    private static final double SHARE = 0.95;
    private static final double MOST = 1.05;

    /** Standard deviations of a reading that a rise, of two readings, may lack. */
    private static final double SCATTER = 4 * Math.sqrt(2);

    @Override
    public String name() {
        return "overload";
    }

    @Override
    public String needs() {
        return "the open ear at two levels of one kind of sound, or 'overload' in the session";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        // A sound that changed meanwhile is told by the later takes ({@link FieldDrift}): the first ones stand beside
        // each other.
        List<CurveReading> firstTakes = Sheets.grouped(Sheets.openEars(session), Sheets.REPEATS).values().stream()
                .map(takes -> takes.get(0))
                .toList();
        Sheets.grouped(firstTakes, Set.of("stimulus", "insertion", "take"))
                .values()
                .forEach(readings -> Levels.series(session, readings).forEach(series -> slope(tally, session, series)));
        session.chain()
                .overload()
                .ifPresent(most -> session.stimuli().values().forEach(sound -> peak(tally, session, sound, most)));
        return tally.done();
    }

    private static void slope(Tally tally, Session session, List<CurveReading> series) {
        tally.looked();
        CurveReading softest = series.get(0);
        CurveReading loudest = series.get(series.size() - 1);
        double rise = Levels.db(session, loudest) - Levels.db(session, softest);
        LevelCurve lack =
                Curves.less(Sheets.curve(softest), Sheets.curve(loudest)).changed(db -> db + rise);
        excess(tally, session, loudest, rise, lack);
        List<Band> run = Curves.wideRun(
                lack, (band, db) -> db > Math.max((1 - SHARE) * rise, SCATTER * Sheets.readingDb(session, band)));
        if (!run.isEmpty()) {
            double share = 1 - Curves.average(lack, run) / rise;
            tally.add(
                    loudest.conditions().without(Sheets.REPEATS),
                    run,
                    Errs.HIDES_ATTENUATION,
                    Consequence.UNUSABLE,
                    new Measure(share, SHARE, "dB per dB"),
                    Remark.of("open-ear-compressed")
                            .with("share", share)
                            .with("rise", rise)
                            .with("threshold", SHARE));
        }
    }

    /** An ear cannot rise by more than the sound: the sound was another than was written down. */
    private static void excess(Tally tally, Session session, CurveReading loudest, double rise, LevelCurve lack) {
        List<Band> run = Curves.wideRun(
                lack, (band, db) -> -db > Math.max((MOST - 1) * rise, SCATTER * Sheets.readingDb(session, band)));
        if (!run.isEmpty()) {
            double share = 1 - Curves.average(lack, run) / rise;
            tally.add(
                    loudest.conditions().without(Sheets.REPEATS),
                    run,
                    Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(share, MOST, "dB per dB"),
                    Remark.of("open-ear-expanded")
                            .with("share", share)
                            .with("rise", rise)
                            .with("threshold", MOST));
        }
    }

    private static void peak(Tally tally, Session session, Stimulus sound, Amount most) {
        // Without a stated peak the level itself stands for it, which no peak lies below.
        boolean stated = sound.peak().filter(p -> p.unit() == most.unit()).isPresent();
        Optional<Amount> peak = sound.peak()
                .or(() -> sound.levels().stream()
                        .filter(l -> l.unit() == most.unit())
                        .findFirst())
                .filter(p -> p.unit() == most.unit());
        if (peak.isEmpty()) {
            return;
        }
        tally.looked();
        double db = peak.get().value();
        if (db > most.value()) {
            under(session, sound)
                    .forEach(of -> tally.add(
                            of,
                            List.of(),
                            Errs.EITHER,
                            Consequence.UNUSABLE,
                            new Measure(db, most.value(), most.unit().symbol()),
                            Remark.of(stated ? "peak-too-high" : "level-too-high")
                                    .with("peak", db)
                                    .with("threshold", most.value())));
        }
    }

    /** Everything read under a sound: curves, traces and harmonics. */
    private static Set<Conditions> under(Session session, Stimulus sound) {
        Set<Conditions> all = new LinkedHashSet<>();
        session.readings().forEach(r -> all.add(r.conditions()));
        session.traces().forEach(t -> all.add(t.conditions()));
        session.harmonics().forEach(h -> all.add(h.conditions()));
        return all.stream()
                .filter(of -> of.get("stimulus").equals(Optional.of(sound.id())))
                .map(of -> of.without(Sheets.REPEATS))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
