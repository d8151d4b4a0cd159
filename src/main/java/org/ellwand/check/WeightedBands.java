package org.ellwand.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Weighting;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Bands that carry the weighting A under the name of levels in dB SPL. Under pink noise the field and the open ear, which
 * does little below 1 kHz, are as loud at 125 Hz as at 1 kHz; weighted they fall by 16.1, 8.6 and 3.2 dB at 125, 250 and 500 Hz
 * (IEC 61672-1). Accused is a curve that lies nearer to the weighting than to a level line, by root mean square over the bands from
 * 125 to 800 Hz, and within {@value #NEAR_DB} dB of it. Sums of such bands weighted again come out low, and a difference of a weighted
 * and an unweighted curve is off by the weighting: an attenuation that
 * falls by it in every setting is noted, since electronics that pass low notes on badly do the same. (The margin: common practice, no source.) Accuses fewer than 1 in 1000 sound
 * sessions.
 */
final class WeightedBands implements DataCheck {
    private static final double NEAR_DB = 3;
    private static final double LOWEST_HZ = 125;
    private static final double HIGHEST_HZ = 800;

    private static final Set<String> STATE = Set.of("setting", "insertion", "take");

    /** A weighting of less than this spoils nothing, dB. */
    private static final double SPOILS_DB = 0.5;

    @Override
    public String name() {
        return "A-weighted bands";
    }

    @Override
    public String needs() {
        return "the field microphone or the open ear under pink noise, 125 Hz to 1 kHz";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Map<Conditions, Weighted> outside = new LinkedHashMap<>();
        Sheets.grouped(Sheets.sounding(session, r -> !r.isInPlace() && Sheets.isPink(session, r)), Sheets.REPEATS)
                .forEach((of, readings) -> Weighted.of(Sheets.meanOf(readings)).ifPresent(one -> outside.put(of, one)));
        boolean all = outside.values().stream().allMatch(Weighted::isSo);
        outside.forEach((of, one) -> {
            tally.looked();
            if (one.isSo()) {
                // Where all of them are, what was read in place will be too.
                add(tally, all ? of.without(Set.of("device")) : of, one, Consequence.UNUSABLE, "weighted-bands");
            }
        });
        if (outside.values().stream().noneMatch(Weighted::isSo)) {
            inPlace(tally, material);
        }
        return tally.done();
    }

    /** Attenuation that falls by the weighting in every setting: what was read in place may be weighted. */
    private static void inPlace(Tally tally, Material material) {
        Attenuations ears = material.attenuations();
        Map<Conditions, List<Weighted>> states = new LinkedHashMap<>();
        for (CurveReading reading : material.inPlace()) {
            ears.of(reading)
                    .flatMap(attenuation -> Weighted.of(attenuation.negated()))
                    .ifPresent(
                            one -> states.computeIfAbsent(reading.conditions().without(STATE), k -> new ArrayList<>())
                                    .add(one));
        }
        states.forEach((of, some) -> {
            tally.looked();
            if (some.stream().allMatch(Weighted::isSo)) {
                add(tally, of, some.get(0), Consequence.NOTED, "weighted-in-place");
            }
        });
    }

    private static void add(Tally tally, Conditions of, Weighted one, Consequence consequence, String key) {
        tally.add(
                of,
                one.bands().stream()
                        .filter(b -> Math.abs(Weights.db(Weighting.A, b)) > SPOILS_DB)
                        .toList(),
                consequence == Consequence.NOTED ? Errs.INVENTS_ATTENUATION : Errs.EITHER,
                consequence,
                new Measure(one.offWeightingDb(), NEAR_DB, "dB"),
                Remark.of(key).with("fall", one.fallDb()).with("off", one.offWeightingDb()));
    }

    /**
     * How near a curve is to the weighting, from 125 to 800 Hz and less its level at 1 kHz.
     *
     * @param offWeightingDb root mean square of its distance from the weighting
     * @param offLevelDb the same from a level line
     * @param fallDb by how much it lies lower at 125 Hz
     * @param bands of the curve
     */
    private record Weighted(double offWeightingDb, double offLevelDb, double fallDb, List<Band> bands) {
        boolean isSo() {
            return offWeightingDb < NEAR_DB && offWeightingDb < offLevelDb / 2;
        }

        static Optional<Weighted> of(LevelCurve curve) {
            Optional<Double> at1kHz = Curves.at(curve, 1000);
            Optional<Double> lowest = Curves.at(curve, LOWEST_HZ);
            if (at1kHz.isEmpty() || lowest.isEmpty() || Curves.at(curve, 500).isEmpty()) {
                return Optional.empty();
            }
            double level = at1kHz.get();
            LevelCurve low = Curves.between(curve, LOWEST_HZ, HIGHEST_HZ).changed(db -> db - level);
            LevelCurve rest = low.changed((band, db) -> db - Weights.db(Weighting.A, band));
            return Optional.of(new Weighted(
                    Curves.rootMeanSquare(rest), Curves.rootMeanSquare(low), level - lowest.get(), curve.bands()));
        }
    }
}
