package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Energy;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Interval;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Subtracted;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;
import org.ellwand.quantity.CellFormula;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;

/**
 * How much attenuation a sound can show: the level of the open ear less the background with the product in place, less a
 * margin. Where a rule asks for more than that and levels were too near their background, no reading made with this sound
 * can tell; a louder one can.
 */
final class Revealing {
    /**
     * So far above the background a level should lie, dB: between the 6 dB below which it is only a bound and the 15 dB
     * from which it is used as it is (common practice, no source).
     */
    private static final double MARGIN_DB = 10;

    private final Rule rule;
    private final boolean gain;

    private Revealing(Rule rule, boolean gain) {
        this.rule = rule;
        this.gain = gain;
    }

    /** Why the rule cannot be judged by these subjects' sounds; empty where it can. */
    Optional<Remark> reason(List<Ready> subjects) {
        if (rule.between().isPresent()) {
            return Optional.empty();
        }
        return subjects.stream()
                .flatMap(s -> s.subject().cells().stream().flatMap(cell -> shortfall(cell, s).stream()))
                .max(Comparator.comparingDouble(Shortfall::missingDb))
                .map(this::reason);
    }

    /**
     * What a sound lacks.
     *
     * @param shownDb the most that it shows
     * @param missingDb how much louder it would have to be
     */
    private record Shortfall(Amount level, double shownDb, double missingDb) {}

    private Remark reason(Shortfall of) {
        double enough = Math.ceil(of.level().value() + of.missingDb());
        String unit = of.level().unit().symbol();
        return Remark.of("not-measurable")
                .with("level", new Measure(of.level().value(), unit))
                .with("shownDb", Math.round(of.shownDb() * 10) / 10.0)
                .with("levelNeeded", new Measure(enough, unit));
    }

    private Optional<Shortfall> shortfall(Cell cell, Ready ready) {
        Optional<Amount> level =
                cell.stimulus().flatMap(s -> s.levels().stream().findFirst());
        OptionalDouble shown = isNearBackground(cell) ? shownDb(cell, ready) : OptionalDouble.empty();
        if (level.isEmpty() || shown.isEmpty() || !(shown.getAsDouble() < lowerDb())) {
            return Optional.empty();
        }
        return Optional.of(new Shortfall(level.get(), shown.getAsDouble(), farEndDb() - shown.getAsDouble()));
    }

    /** The least attenuation that the rule asks for; −∞ where none. */
    private double lowerDb() {
        return gain ? -rule.limit().upper() : rule.limit().lower();
    }

    /** The largest attenuation that must be told from others, to judge the rule. */
    private double farEndDb() {
        Interval limit = rule.limit();
        double far = gain ? -limit.lower() : limit.upper();
        return Double.isFinite(far) ? far : lowerDb();
    }

    /** A level in place is no bound but for its background. */
    private static boolean isNearBackground(Cell cell) {
        return takes(cell).stream().map(CurveReading::spectrum).anyMatch(s -> !s.isMeasured());
    }

    private static List<CurveReading> takes(Cell cell) {
        return cell.insertions().stream()
                .map(Insertion::takes)
                .flatMap(List::stream)
                .filter(CurveReading.class::isInstance)
                .map(CurveReading.class::cast)
                .toList();
    }

    private OptionalDouble shownDb(Cell cell, Ready ready) {
        List<Band> bands = new ArrayList<>(ready.bands());
        bands.addAll(ready.missing());
        List<Double> open = CellFormula.meanLevels(cell, true, ready.resolution(), bands);
        Optional<List<Double>> background = background(cell, ready, bands);
        if (open.isEmpty() || background.isEmpty()) {
            return OptionalDouble.empty();
        }
        return shownDb(open, background.get());
    }

    /** The lowest background of all takes in place, band by band. */
    private static Optional<List<Double>> background(Cell cell, Ready ready, List<Band> bands) {
        List<Double> lowest = new ArrayList<>();
        List<Spectrum> quiet = takes(cell).stream()
                .flatMap(t -> t.subtracted().stream())
                .filter(s -> !s.backgroundDb().isEmpty())
                .map(s -> spectrum(s).sumTo(ready.resolution()))
                .toList();
        for (Band band : bands) {
            OptionalDouble level = quiet.stream()
                    .flatMap(s -> s.at(band).stream())
                    .mapToDouble(Spectrum.Level::levelDb)
                    .min();
            if (level.isEmpty()) {
                return Optional.empty();
            }
            lowest.add(level.getAsDouble());
        }
        return Optional.of(lowest);
    }

    private static Spectrum spectrum(Subtracted background) {
        TreeMap<Band, Spectrum.Level> levels = new TreeMap<>();
        background.backgroundDb().forEach((band, db) -> levels.put(band, Spectrum.Level.measured(db)));
        return new Spectrum(levels.firstKey().resolution(), levels);
    }

    private OptionalDouble shownDb(List<Double> open, List<Double> background) {
        double[] shown = new double[open.size()];
        for (int b = 0; b < shown.length; b++) {
            shown[b] = open.get(b) - background.get(b) - MARGIN_DB;
        }
        Arrays.sort(shown);
        return switch (rule.statistic().orElse(Statistic.MEAN)) {
            case MEAN -> Arrays.stream(shown).average();
            case OVERALL -> OptionalDouble.of(sum(open) - sum(background) - MARGIN_DB);
            case EVERY_BAND, LOWEST -> OptionalDouble.of(shown[0]);
            case HIGHEST -> OptionalDouble.of(shown[shown.length - 1]);
            case MEDIAN -> OptionalDouble.of(shown[(shown.length - 1) / 2]);
            case SPREAD, SLOPE -> OptionalDouble.empty();
        };
    }

    private static double sum(List<Double> levelsDb) {
        return Energy.sumDb(levelsDb.stream().mapToDouble(d -> d).toArray());
    }

    /** Whether a quantity is what a product takes off or adds, so that sounds can be too soft for it. */
    static boolean concerns(String quantity) {
        return quantity.equals("attenuation") || quantity.equals("insertion gain");
    }

    static Revealing of(Rule rule) {
        return new Revealing(rule, !rule.quantity().equals("attenuation"));
    }
}
