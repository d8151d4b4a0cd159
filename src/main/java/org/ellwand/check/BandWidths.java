package org.ellwand.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.check.Finding.About;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Octaves under the name of third octaves, or the other way round. Neighbouring centres of third octaves lie 1.26 apart, those of
 * octaves 2.0 (ISO 266): a sheet called third-octave that has every third centre only holds octaves, or a third of the
 * sound. Under pink noise an octave is 10 lg 3 = 4.8 dB louder than a third octave, so that the field microphone, summed, comes short
 * of the stated level by that where thirds go by the name of octaves; the other way round it is too loud by that ({@link OctaveLevels}). Levels are then wrong; differences of like with like nearly
 * keep their value. (Centres between those of ISO 266, as audiometers use, are refused when read. The margin of 1.5 dB: common
 * practice, no source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class BandWidths implements DataCheck {
    static final int FEWEST = 4;
    static final double OCTAVE_TO_THIRD_DB = 10 * Math.log10(3);
    static final double MARGIN_DB = 1.5;

    @Override
    public String name() {
        return "width of the bands";
    }

    @Override
    public String needs() {
        return "four third octaves, or octaves of the field microphone under pink noise of a level in dB SPL";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session).about(About.ABSOLUTE_LEVELS);
        List<CurveReading> thirds = session.readings().stream()
                .filter(r -> r.values() != Reading.Values.SUBJECT_ATTENUATION)
                .filter(r -> r.spectrum().bandList().size() >= FEWEST)
                .filter(r -> r.spectrum().resolution() == Resolution.THIRD_OCTAVE)
                .toList();
        gaps(tally, thirds);
        Sheets.fields(session).stream()
                .filter(r -> r.spectrum().resolution() == Resolution.OCTAVE && Sheets.isPink(session, r))
                .forEach(r -> sum(tally, session, r));
        OctaveLevels.in(material, tally);
        return tally.done();
    }

    /** One finding where all of the sheets are so. */
    private static void gaps(Tally tally, List<CurveReading> thirds) {
        List<CurveReading> apart =
                thirds.stream().filter(BandWidths::isOctaveApart).toList();
        boolean all = apart.size() == thirds.size();
        if (!thirds.isEmpty()) {
            tally.looked();
        }
        apart.stream()
                .limit(all ? 1 : apart.size())
                .forEach(r -> tally.add(
                        all ? Conditions.of(Map.of()) : r.conditions(),
                        List.of(),
                        Errs.EITHER,
                        Consequence.NOTED,
                        new Measure(2, 1.26, "ratio of neighbouring centres"),
                        Remark.of("octaves-as-thirds")
                                .with("bands", r.spectrum().bandList().size())));
    }

    private static boolean isOctaveApart(CurveReading reading) {
        List<Band> bands = reading.spectrum().bandList();
        return IntStream.range(1, bands.size())
                .allMatch(i -> bands.get(i).index() - bands.get(i - 1).index() == 3);
    }

    private static void sum(Tally tally, Session session, CurveReading reading) {
        LevelCurve curve = Sheets.curve(reading);
        Optional<Double> stated = Sheets.levelDb(session, reading);
        if (stated.isEmpty() || curve.size() < FEWEST) {
            return;
        }
        tally.looked();
        // Ten octaves are audible; those that were not measured hold the rest of the energy.
        double rest = 10 * Math.log10(10.0 / curve.size());
        double sum = Curves.overallDb(curve, Weighting.Z);
        double lacking = stated.get() - sum;
        if (lacking > OCTAVE_TO_THIRD_DB - MARGIN_DB && lacking < OCTAVE_TO_THIRD_DB + rest + MARGIN_DB) {
            tally.add(
                    reading.conditions(),
                    List.of(),
                    Errs.EITHER,
                    Consequence.NOTED,
                    new Measure(lacking, OCTAVE_TO_THIRD_DB - MARGIN_DB, "dB"),
                    Remark.of("thirds-as-octaves")
                            .with("sum", sum)
                            .with("stated", stated.get())
                            .with("lacking", lacking));
        }
    }
}
