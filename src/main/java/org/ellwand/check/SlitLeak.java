package org.ellwand.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * An air path past the tip or along the probe tube. Low notes pass it, and above them the loss climbs by 6 to 12 dB per
 * octave: a slit of 0.2 mm leaves 2, 6, 13 and 22 dB at 125, 250, 500 and 1000 Hz (viscous slit, 12 mm long, 2 mm wide,
 * into 1 cm³; worked out from that model). A tube laid beside a mould leaks more at low frequencies than one in a vent
 * (Hearing Review, abstract read).
 *
 * <p>Looked at is the strongest setting of each insertion, because sound that a product passes on hides a leak: the mean
 * attenuation of 125 to 250 Hz, and the slope from 125 to 1000 Hz per octave. What leaks as no other insertion in that ear does is
 * of no use; what all do may be the product. A session that says {@code open by design: yes} has none of these findings. A muff that
 * mass alone holds back has them; it is then a property. Accuses fewer than 1 in 1000 sound sessions.
 */
final class SlitLeak implements DataCheck {
    /** Of an insertion that takes less off at low notes than another one. */
    static final String LESS_THAN_BEST = "less-than-best";

    private static final String BETTER = "better";

    /** Noted below this mean from 125 to 250 Hz together with {@link #STEEP}, dB (common practice, no source). */
    private static final double LOW_DB = 10;

    /** dB per octave; what is sealed rises less. */
    private static final double STEEP = 5;

    /** Below this together with {@link #VERY_STEEP} the leak is what was measured, dB (common practice, no source). */
    private static final double VERY_LOW_DB = 5;

    /** dB per octave. */
    private static final double VERY_STEEP = 6;

    /** An insertion so far below the best one of the same ear leaked more, dB (common practice, no source). */
    private static final double BEHIND_BEST_DB = 6;

    /** Standard deviations of an insertion that the best of a few may lie above another. */
    private static final double SCATTER = 4 * Math.sqrt(2);

    /** A wide leak resonates with the air behind the tip: nothing passive amplifies so much below 1 kHz, dB. */
    private static final double BOOST_DB = -2;

    /** What takes so much off from 2 to 4 kHz does not amplify on purpose, dB (common practice, no source). */
    private static final double HELD_BACK_DB = 10;

    private static final double HIGHEST_HZ = 1000;
    private static final double OCTAVES = 3;
    private static final Set<String> INSERTION = Set.of("insertion");
    private static final Set<String> SWITCHED = Set.of("setting", "stimulus", "take");

    @Override
    public String name() {
        return "slit leak";
    }

    @Override
    public String needs() {
        return "attenuation at 125, 250 and 1000 Hz";
    }

    /** One insertion at its strongest setting. */
    private record Seal(Conditions insertion, LevelCurve attenuation, double lowDb, double slope) {
        Conditions state() {
            return insertion.without(INSERTION);
        }

        List<Band> bands() {
            return Curves.between(attenuation, 0, HIGHEST_HZ).bands();
        }
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        List<Seal> seals = new ArrayList<>();
        Attenuations ears = material.attenuations();
        Sheets.grouped(material.inPlace(), SWITCHED)
                .forEach((insertion, readings) ->
                        strongest(ears, insertion, readings).ifPresent(seals::add));
        Map<Conditions, List<Seal>> alike = seals.stream()
                .sorted(Comparator.comparingDouble(Seal::lowDb).reversed())
                .collect(Collectors.groupingBy(Seal::state));
        for (Seal seal : seals) {
            tally.looked();
            if (session.chain().openByDesign()) {
                continue;
            }
            judge(tally, session, seal, alike.getOrDefault(seal.state(), List.of(seal)));
        }
        return tally.done();
    }

    private static Optional<Seal> strongest(Attenuations ears, Conditions insertion, List<CurveReading> readings) {
        return readings.stream()
                .flatMap(r -> ears.of(r).stream())
                .flatMap(curve -> seal(insertion, curve).stream())
                .max(Comparator.comparingDouble(Seal::lowDb));
    }

    private static Optional<Seal> seal(Conditions insertion, LevelCurve curve) {
        Optional<Double> lowest = Curves.at(curve, 125);
        Optional<Double> upper = Curves.at(curve, HIGHEST_HZ);
        if (lowest.isEmpty() || upper.isEmpty() || Curves.at(curve, 250).isEmpty()) {
            return Optional.empty();
        }
        double lowDb = Curves.average(Curves.between(curve, 125, 250));
        return Optional.of(new Seal(insertion, curve, lowDb, (upper.get() - lowest.get()) / OCTAVES));
    }

    /** @param alike the insertions of the same state, this one among them, the best first */
    private static void judge(Tally tally, Session session, Seal seal, List<Seal> alike) {
        double bestDb = alike.get(0).lowDb();
        Band lowest = seal.attenuation().lowest();
        double behind = Math.max(BEHIND_BEST_DB, SCATTER * Sheets.insertionDb(session, lowest));
        double boost = boostDb(seal);
        if (seal.lowDb() < VERY_LOW_DB && seal.slope() >= VERY_STEEP) {
            slit(tally, seal, Consequence.UNUSABLE, VERY_LOW_DB);
        } else if (boost < BOOST_DB) {
            Remark remark = Remark.of("leak-amplifies").with("boost", -boost).with("threshold", -BOOST_DB);
            add(tally, seal, Consequence.UNUSABLE, new Measure(boost, BOOST_DB, "dB"), remark);
        } else if (seal.lowDb() < VERY_LOW_DB && seal.slope() >= STEEP && bestDb - seal.lowDb() >= behind) {
            Remark remark = Remark.of("leak-behind-best")
                    .with("low", seal.lowDb())
                    .with("slope", seal.slope())
                    .with("behind", bestDb - seal.lowDb())
                    .with("threshold", behind);
            add(tally, seal, Consequence.UNUSABLE, new Measure(bestDb - seal.lowDb(), behind, "dB"), remark);
        } else if (seal.lowDb() < LOW_DB && seal.slope() >= STEEP) {
            slit(tally, seal, Consequence.NOTED, LOW_DB);
        } else if (bestDb - seal.lowDb() >= behind) {
            double figure = bestDb - seal.lowDb();
            Remark remark = Remark.of(LESS_THAN_BEST)
                    .with("low", seal.lowDb())
                    .with("behind", figure)
                    .with("threshold", behind)
                    .with(BETTER, better(seal, alike, behind));
            add(tally, seal, Consequence.NOTED, new Measure(figure, behind, "dB"), remark);
        }
    }

    /** The insertions that take so much more off than one. */
    private static List<String> better(Seal seal, List<Seal> alike, double behindDb) {
        return alike.stream()
                .takeWhile(other -> other.lowDb() - seal.lowDb() >= behindDb)
                .map(other -> Sheets.name(other.insertion()))
                .sorted()
                .toList();
    }

    /** The insertions, as findings name readings, that one was found to take less off than; none in other findings. */
    static List<String> better(Finding finding) {
        return finding.remark().key().equals(LESS_THAN_BEST)
                        && finding.remark().figures().get(BETTER) instanceof List<?> names
                ? names.stream().map(String::valueOf).toList()
                : List.of();
    }

    /** The least attenuation from 160 Hz to 1 kHz of what holds back the sound above; 0 where nothing does. */
    private static double boostDb(Seal seal) {
        boolean holdsBack = Curves.average(Curves.between(seal.attenuation(), 2000, 4000)) > HELD_BACK_DB;
        return holdsBack
                ? Arrays.stream(Curves.between(seal.attenuation(), 160, HIGHEST_HZ)
                                .numbers())
                        .min()
                        .orElse(0)
                : 0;
    }

    private static void slit(Tally tally, Seal seal, Consequence consequence, double threshold) {
        Remark remark = Remark.of("slit-leak")
                .with("low", seal.lowDb())
                .with("slope", seal.slope())
                .with("threshold", threshold);
        add(tally, seal, consequence, new Measure(seal.lowDb(), threshold, "dB"), remark);
    }

    private static void add(Tally tally, Seal seal, Consequence consequence, Measure measure, Remark remark) {
        tally.add(seal.insertion(), seal.bands(), Errs.HIDES_ATTENUATION, consequence, measure, remark);
    }
}
