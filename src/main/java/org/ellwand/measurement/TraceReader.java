package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;

/** Reads {@code traces} and their sheets. */
final class TraceReader {
    static final List<String> KEYS = List.of("file", "header line", "step", "product");
    static final List<String> STEP_KEYS = List.of("at", "from", "to");
    private static final String LEVEL = "a level such as '55 dB SPL'";

    private final ConditionFiller filler;
    private final Set<String> conditions;
    private final DataFiles files;
    private final Set<String> dataFiles;
    private final Optional<Unit> levelsIn;

    TraceReader(
            ConditionFiller filler,
            Set<String> conditions,
            DataFiles files,
            Set<String> dataFiles,
            Optional<Unit> levelsIn) {
        this.filler = filler;
        this.conditions = conditions;
        this.files = files;
        this.dataFiles = dataFiles;
        this.levelsIn = levelsIn;
    }

    List<Trace> read(Keys session) {
        List<Trace> traces = new ArrayList<>();
        session.mappings("traces").forEach(keys -> trace(keys).ifPresent(traces::add));
        return List.copyOf(traces);
    }

    private Optional<Trace> trace(Keys keys) {
        Found problems = keys.problems();
        int before = problems.size();
        keys.onlyKnown("a trace", ConditionNames.after(KEYS, conditions));
        keys.need("file", "name the data file");
        Optional<DataFiles.DataFile> file = keys.text("file").flatMap(f -> files.find(f, keys.placeOf("file")));
        Optional<Step> step = keys.mapping("step").flatMap(TraceReader::step);
        // An entry is one reading: its conditions are the reading's own.
        Optional<Conditions> filled = filler.fill(Map.of(), keys.conditions(conditions), keys.place());
        filled.ifPresent(conditionsOfIt -> filler.checkTake(conditionsOfIt, keys.place()));
        int headerLine = keys.count("header line").orElse(0);
        file.ifPresent(f -> dataFiles.add(f.relative()));
        if (problems.size() > before || file.isEmpty() || filled.isEmpty()) {
            return Optional.empty();
        }
        filler.once(kind(step), filled.get(), keys.place());
        TraceSheet sheet = sheet(file.get(), headerLine, step, problems);
        if (problems.size() == before) {
            step.ifPresentOrElse(
                    s -> checkStepInside(s, sheet.timeS(), keys),
                    () -> checkLength(sheet.timeS(), file.get(), problems));
        }
        return sheet.unit()
                .map(unit -> new Trace(
                        filled.get(),
                        step,
                        unit,
                        sheet.timeS(),
                        sheet.levelDb(),
                        Place.ofFile(file.get().relative())));
    }

    /** What tells two traces of the same conditions apart. */
    static String kind(Optional<Step> step) {
        return step.map(s -> "trace of a step from " + s.from().value() + " to " + s.to().value())
                .orElse("trace without a step");
    }

    private TraceSheet sheet(DataFiles.DataFile file, int headerLine, Optional<Step> step, Found problems) {
        Optional<Unit> unit = levelsIn.or(() -> step.map(s -> s.from().unit()));
        TraceSheet sheet = new TraceSheet(
                new SheetForm(file.relative(), Optional.empty(), "level", unit, Set.of(), Set.of(), problems), step);
        new Sheet(SheetText.of(file.path()), file.relative(), headerLine, problems).read(sheet);
        return sheet;
    }

    static Optional<Step> step(Keys keys) {
        keys.onlyKnown("a step", STEP_KEYS);
        keys.need("at", "give the time of the step");
        keys.need("from", "give the level before the step");
        keys.need("to", "give the level after the step");
        Optional<Amount> at = keys.amount("at", unit -> unit.dimension() == Dimension.TIME, "a time such as '1.000 s'");
        Optional<Amount> from = keys.amount("from", Unit::isLevel, LEVEL);
        Optional<Amount> to = keys.amount("to", Unit::isLevel, LEVEL);
        if (at.isEmpty() || from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        if (from.get().unit() != to.get().unit()
                || from.get().value() == to.get().value()) {
            keys.problems().add(keys.place(), "a step goes from one level to another of the same weighting");
            return Optional.empty();
        }
        return Optional.of(new Step(at.get(), from.get(), to.get()));
    }

    private static void checkLength(List<Double> timeS, DataFiles.DataFile file, Found problems) {
        if (timeS.size() < 2) {
            problems.add(Place.ofFile(file.relative()), "has one row; a trace has two or more");
        }
    }

    static void checkStepInside(Step step, List<Double> timeS, Keys keys) {
        double at = step.at().in(Unit.SECOND);
        if (timeS.size() < 2 || at <= timeS.get(0) || at >= timeS.get(timeS.size() - 1)) {
            String span = timeS.isEmpty() ? "nowhere" : timeS.get(0) + " s to " + timeS.get(timeS.size() - 1) + " s";
            keys.problems().add(keys.placeOf("step"), "the step lies outside the trace, which runs from " + span);
        }
    }
}
