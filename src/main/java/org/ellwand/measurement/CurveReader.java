package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;
import org.jspecify.annotations.Nullable;

/** Turns the sheets of a session into its readings. */
final class CurveReader {
    private final ConditionFiller filler;
    private final Set<String> conditions;
    private final Optional<Resolution> resolution;
    private final Optional<Unit> levelsIn;
    private final Found problems;
    private final List<CurveReading> readings = new ArrayList<>();
    private final List<HarmonicReading> harmonics = new ArrayList<>();
    private int[] bandIndices = {};
    private List<Band> bandList = List.of();

    CurveReader(
            ConditionFiller filler,
            Set<String> conditions,
            Optional<Resolution> resolution,
            Optional<Unit> levelsIn,
            Found problems) {
        this.filler = filler;
        this.conditions = conditions;
        this.resolution = resolution;
        this.levelsIn = levelsIn;
        this.problems = problems;
    }

    List<CurveReading> readings() {
        return List.copyOf(readings);
    }

    List<HarmonicReading> harmonics() {
        return List.copyOf(harmonics);
    }

    void read(DataEntry entry) {
        boolean wanting = !entry.isHarmonics() && resolution.isEmpty();
        if (wanting || problems.isEnough()) {
            return;
        }
        List<SheetCurve> curves = curves(entry);
        Map<Conditions, SheetCurve> wholes = new HashMap<>(2 * curves.size());
        List<Filled> filled = new ArrayList<>(curves.size());
        for (SheetCurve curve : curves) {
            Place place = new Place(entry.file().relative(), curve.line(), 0);
            Optional<Conditions> conditions = filler.fill(entry.defaults(), curve.cells(), place);
            if (conditions.isPresent() && !isPart(entry, curve, wholes.putIfAbsent(conditions.get(), curve))) {
                filled.add(new Filled(curve, conditions.get(), place));
            }
        }
        filled.forEach(one -> add(entry, one.curve(), one.conditions(), one.place()));
    }

    /** A curve and all its conditions. */
    private record Filled(SheetCurve curve, Conditions conditions, Place place) {}

    /**
     * Whether the rows belong to a reading that began above: some name a condition, others leave it to the default. A column
     * is a whole reading.
     */
    private static boolean isPart(DataEntry entry, SheetCurve curve, @Nullable SheetCurve whole) {
        return whole != null
                && entry.layout() != DataEntry.Layout.COLUMNS
                && whole.numbers().takesIn(curve.numbers());
    }

    /** The curves of a sheet, none where the sheet has a problem. */
    private List<SheetCurve> curves(DataEntry entry) {
        int before = problems.size();
        Sheet sheet =
                new Sheet(SheetText.of(entry.file().path()), entry.file().relative(), entry.headerLine(), problems);
        List<SheetCurve> curves;
        if (entry.layout() == DataEntry.Layout.COLUMNS) {
            WideSheet wide = new WideSheet(form(entry, problems), entry.columns());
            sheet.read(wide);
            curves = wide.curves();
        } else {
            TidySheet tidy = SheetParts.ofLarge(entry.file().path(), entry.headerLine())
                    .flatMap(parts -> parts.read(entry.file().relative(), found -> form(entry, found)))
                    .orElseGet(() -> {
                        TidySheet whole = new TidySheet(form(entry, problems));
                        sheet.read(whole);
                        return whole;
                    });
            curves = problems.size() > before ? List.of() : tidy.curves();
        }
        return problems.size() > before ? List.of() : curves;
    }

    private SheetForm form(DataEntry entry, Found found) {
        boolean differences = !entry.isHarmonics() && !entry.isLevels();
        return new SheetForm(
                entry.file().relative(),
                entry.isHarmonics() ? Optional.empty() : resolution,
                entry.layout() == DataEntry.Layout.ATTENUATION ? "attenuation" : "level",
                differences ? Optional.of(Unit.DB) : levelsIn,
                conditions,
                entry.ignored(),
                found);
    }

    private void add(DataEntry entry, SheetCurve curve, Conditions filled, Place place) {
        filler.checkTake(filled, place);
        String device = filled.get(ConditionNames.DEVICE).orElse("");
        if (!curve.numbers().hasNumbers()) {
            problems.add(place, "no level at all in this reading: " + filled);
        } else if (entry.isHarmonics()) {
            filler.once(
                    "row of harmonics"
                            + entry.fundamental().map(f -> " of " + f.value()).orElse(""),
                    filled,
                    place);
            harmonics.add(new HarmonicReading(filled, entry.fundamental(), byOrder(curve.numbers()), place));
        } else if (entry.isLevels() && filled.get(ConditionNames.STIMULUS).isEmpty()) {
            problems.add(place, "no stimulus: a level says nothing without the sound it was measured under");
        } else if (!entry.isLevels() && !ConditionFiller.isInPlace(device)) {
            problems.add(place, "'device: " + device + "' has no attenuation and no insertion gain");
        } else {
            filler.once("reading", filled, place);
            readings.add(new CurveReading(filled, entry.values(), spectrum(curve.numbers()), place));
        }
    }

    /** Curves of the same bands share one list of them. */
    private Spectrum spectrum(SheetReading numbers) {
        Resolution bands = resolution.orElseThrow();
        numbers.sort();
        int[] indices = numbers.measured();
        if (!Arrays.equals(indices, bandIndices)) {
            bandIndices = indices;
            // Of a list that a stream made, every spectrum would take a copy.
            bandList = List.copyOf(
                    Arrays.stream(indices).mapToObj(i -> new Band(bands, i)).toList());
        }
        return Spectrum.measured(bands, bandList, numbers.measuredDb());
    }

    private static SortedMap<Integer, Double> byOrder(SheetReading numbers) {
        SortedMap<Integer, Double> levels = new TreeMap<>();
        for (int i = 0; i < numbers.size(); i++) {
            if (Double.isFinite(numbers.value(i))) {
                levels.put(numbers.at(i), numbers.value(i));
            }
        }
        return levels;
    }
}
