package org.ellwand.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Between;
import org.ellwand.claim.Population;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Figure;
import org.ellwand.pairing.Averaged;
import org.ellwand.pairing.FigureSelection;
import org.ellwand.pairing.Unpaired;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.RatioErrors;
import org.ellwand.words.Remark;

/** Makes the cells of a rule about a figure: repeats averaged, then compared, then averaged over ears or units. */
final class FigureCells {
    private static final String HEAD = "head";
    private static final String UNIT = "unit";

    private final Rule rule;
    private final List<FigureCell> cells = new ArrayList<>();
    private final NavigableSet<Remark> dropped = new TreeSet<>();
    private final NavigableSet<Remark> notes = new TreeSet<>();

    private FigureCells(Rule rule) {
        this.rule = rule;
    }

    static FigureCells of(Rule rule, FigureSelection selection) throws InputException {
        FigureCells cells = new FigureCells(rule);
        if (rule.between().isPresent()) {
            cells.compare(cells.single(selection.side(rule, true)), cells.single(selection.side(rule, false)));
        } else {
            cells.cells.addAll(cells.combined(cells.single(selection.select(rule))));
        }
        return cells;
    }

    List<FigureCell> cells() {
        return List.copyOf(cells);
    }

    /** Why figures that were found cannot be used. */
    List<Remark> dropped() {
        return List.copyOf(dropped);
    }

    /** What a reader must know of how the cells were made. */
    List<Remark> notes() {
        return List.copyOf(notes);
    }

    private List<PlainFigure> single(Map<Conditions, List<Figure>> groups) {
        List<PlainFigure> plain = new ArrayList<>();
        groups.forEach((conditions, figures) -> plain.add(mean(conditions, figures)));
        return plain;
    }

    private PlainFigure mean(Conditions conditions, List<Figure> figures) {
        Unit unit = unitOf(figures.get(0).value());
        double sum = 0;
        Optional<Double> variance = Optional.of(0.0);
        for (Figure figure : figures) {
            sum += figure.value().in(unit);
            Optional<Double> u = figure.uncertainty().map(a -> deviation(a, unit));
            variance = variance.flatMap(v -> u.map(x -> v + x * x));
        }
        int n = figures.size();
        return PlainFigure.of(conditions, sum / n, unit, variance.map(v -> v / (n * n)), n);
    }

    private Unit unitOf(Amount value) {
        Unit limit = rule.limit().unit();
        return value.unit().dimension() == limit.dimension() ? limit : value.unit();
    }

    private static double deviation(Amount uncertainty, Unit unit) {
        return uncertainty.unit().dimension() == unit.dimension() ? uncertainty.in(unit) : uncertainty.value();
    }

    private void compare(List<PlainFigure> first, List<PlainFigure> second) {
        Averaged averaged = Averaged.byMean(rule);
        Map<Conditions, List<List<PlainFigure>>> groups = new LinkedHashMap<>();
        first.forEach(one -> side(groups, one, averaged, 0).add(one));
        second.forEach(other -> side(groups, other, averaged, 1).add(other));
        List<PlainFigure> compared = new ArrayList<>();
        groups.values().forEach(sides -> compare(sides.get(0), sides.get(1), averaged, compared));
        cells.addAll(0, combined(compared));
        if (cells.isEmpty()) {
            Unpaired.all(rule.between().orElseThrow(), conditions(first), conditions(second))
                    .ifPresent(dropped::add);
        }
    }

    private List<PlainFigure> side(
            Map<Conditions, List<List<PlainFigure>>> groups, PlainFigure plain, Averaged averaged, int side) {
        Conditions common = plain.conditions().without(ignored()).without(averaged.conditions());
        return groups.computeIfAbsent(common, k -> List.of(new ArrayList<>(), new ArrayList<>()))
                .get(side);
    }

    private void compare(
            List<PlainFigure> first, List<PlainFigure> second, Averaged averaged, List<PlainFigure> compared) {
        List<PlainFigure> pairs = pairs(first, second);
        if (averaged.isServedBy(conditions(pairs), conditions(first), conditions(second))) {
            compared.addAll(pairs);
            Unpaired.some(averaged, conditions(first), conditions(second), conditions(pairs))
                    .ifPresent(dropped::add);
        } else {
            cells.add(means(first, second, averaged));
            notes.add(Unpaired.compared(averaged, conditions(first), conditions(second)));
        }
    }

    private List<PlainFigure> pairs(List<PlainFigure> first, List<PlainFigure> second) {
        List<PlainFigure> compared = new ArrayList<>();
        for (PlainFigure one : first) {
            Conditions common = one.conditions().without(ignored());
            second.stream()
                    .filter(other -> other.conditions().without(ignored()).equals(common))
                    .filter(this::isComparable)
                    .forEach(other -> compared.add(compare(one, other, common)));
        }
        return compared;
    }

    /** To nothing there is no ratio. */
    private boolean isComparable(PlainFigure second) {
        boolean comparable = !rule.ratio() || second.value() != 0;
        if (!comparable) {
            dropped.add(Remark.of("no-finite-number"));
        }
        return comparable;
    }

    private Set<String> ignored() {
        Set<String> ignored = new HashSet<>(Set.of("session"));
        Between between = rule.between().orElseThrow();
        ignored.add(between.isOfSounds() ? "stimulus" : between.condition());
        return ignored;
    }

    /** Means over other people, or other units, on either side. */
    private FigureCell means(List<PlainFigure> first, List<PlainFigure> second, Averaged averaged) {
        Unit unit = first.get(0).unit();
        FigureMeans means =
                new FigureMeans(numbers(first, unit, averaged), numbers(second, unit, averaged), rule.ratio());
        Conditions common = first.get(0).conditions().without(ignored()).without(averaged.conditions());
        List<Remark> caps =
                means.errors().isPresent() ? List.of() : List.of(Remark.of(averaged.units() ? "one-unit" : "one-head"));
        return new FigureCell(
                common,
                means.value(),
                rule.ratio() ? Unit.NONE : unit,
                Optional.of(means.errors().orElse(new NormalErrors(0))),
                means.scatters().stream()
                        .map(s -> FigureAverage.seen(averaged.units() ? UNIT : HEAD, s))
                        .toList(),
                first.size() + second.size(),
                caps);
    }

    /** The mean of each person or unit. */
    private static double[] numbers(List<PlainFigure> side, Unit unit, Averaged averaged) {
        Map<Set<String>, List<Double>> members = new LinkedHashMap<>();
        side.forEach(
                plain -> members.computeIfAbsent(averaged.members(List.of(plain.conditions())), k -> new ArrayList<>())
                        .add(plain.unit().convert(plain.value(), unit)));
        return members.values().stream()
                .mapToDouble(m -> m.stream().mapToDouble(x -> x).average().orElseThrow())
                .toArray();
    }

    private static List<Conditions> conditions(List<PlainFigure> plain) {
        return plain.stream().map(PlainFigure::conditions).toList();
    }

    private PlainFigure compare(PlainFigure one, PlainFigure other, Conditions common) {
        int count = one.count() + other.count();
        if (!rule.ratio()) {
            Optional<Double> variance =
                    one.variance().flatMap(a -> other.variance().map(b -> a + b));
            return PlainFigure.of(common, one.value() - other.value(), one.unit(), variance, count);
        }
        double scale = other.unit().convert(1, one.unit());
        double second = scale * other.value();
        Optional<Errors> errors = one.variance()
                .flatMap(a -> other.variance()
                        .map(b -> new RatioErrors(one.value(), Math.sqrt(a), second, scale * Math.sqrt(b))));
        return new PlainFigure(common, one.value() / second, Unit.NONE, Optional.empty(), errors, count);
    }

    private List<FigureCell> combined(List<PlainFigure> plain) {
        boolean ears = rule.ears().filter(Population::isBeyondTheMeasured).isPresent();
        boolean units = rule.units().filter(Population::isBeyondTheMeasured).isPresent();
        if (!ears && !units) {
            return plain.stream().map(one -> one.cell(rule)).toList();
        }
        Set<String> averaged = ears ? Set.of("session", "ear", "head", "side", "unit") : Set.of("session", "unit");
        Map<String, List<PlainFigure>> groups = new TreeMap<>();
        plain.forEach(
                p -> groups.computeIfAbsent(p.conditions().without(averaged).toString(), k -> new ArrayList<>())
                        .add(p));
        return groups.values().stream()
                .map(g -> new FigureAverage(rule, ears ? HEAD : UNIT, averaged).of(g))
                .toList();
    }
}
