package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
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
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.RatioErrors;
import org.ellwand.statistics.Scatter;
import org.ellwand.words.Remark;

/** Makes the cells of a rule about a figure: repeats averaged, then compared, then averaged over ears or units. */
final class FigureCells {
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

    /** A mean of repeats; the variance is absent where one of them has no uncertainty. */
    private record Plain(
            Conditions conditions,
            double value,
            Unit unit,
            Optional<Double> variance,
            Optional<Errors> errors,
            int count) {
        /** With normal errors. */
        static Plain of(Conditions conditions, double value, Unit unit, Optional<Double> variance, int count) {
            return new Plain(
                    conditions, value, unit, variance, variance.map(v -> new NormalErrors(Math.sqrt(v))), count);
        }
    }

    private List<Plain> single(Map<Conditions, List<Figure>> groups) {
        List<Plain> plain = new ArrayList<>();
        groups.forEach((conditions, figures) -> plain.add(mean(conditions, figures)));
        return plain;
    }

    private Plain mean(Conditions conditions, List<Figure> figures) {
        Unit unit = unitOf(figures.get(0).value());
        double sum = 0;
        Optional<Double> variance = Optional.of(0.0);
        for (Figure figure : figures) {
            sum += figure.value().in(unit);
            Optional<Double> u = figure.uncertainty().map(a -> deviation(a, unit));
            variance = variance.flatMap(v -> u.map(x -> v + x * x));
        }
        int n = figures.size();
        return Plain.of(conditions, sum / n, unit, variance.map(v -> v / (n * n)), n);
    }

    private Unit unitOf(Amount value) {
        Unit limit = rule.limit().unit();
        return value.unit().dimension() == limit.dimension() ? limit : value.unit();
    }

    private static double deviation(Amount uncertainty, Unit unit) {
        return uncertainty.unit().dimension() == unit.dimension() ? uncertainty.in(unit) : uncertainty.value();
    }

    private void compare(List<Plain> first, List<Plain> second) {
        Averaged averaged = Averaged.byMean(rule);
        Map<Conditions, List<List<Plain>>> groups = new LinkedHashMap<>();
        first.forEach(one -> side(groups, one, averaged, 0).add(one));
        second.forEach(other -> side(groups, other, averaged, 1).add(other));
        List<Plain> compared = new ArrayList<>();
        groups.values().forEach(sides -> compare(sides.get(0), sides.get(1), averaged, compared));
        cells.addAll(0, combined(compared));
        if (cells.isEmpty()) {
            Unpaired.all(rule.between().orElseThrow(), conditions(first), conditions(second))
                    .ifPresent(dropped::add);
        }
    }

    private List<Plain> side(Map<Conditions, List<List<Plain>>> groups, Plain plain, Averaged averaged, int side) {
        Conditions common = plain.conditions().without(ignored()).without(averaged.conditions());
        return groups.computeIfAbsent(common, k -> List.of(new ArrayList<>(), new ArrayList<>()))
                .get(side);
    }

    private void compare(List<Plain> first, List<Plain> second, Averaged averaged, List<Plain> compared) {
        List<Plain> pairs = pairs(first, second);
        if (averaged.isServedBy(conditions(pairs), conditions(first), conditions(second))) {
            compared.addAll(pairs);
            Unpaired.some(averaged, conditions(first), conditions(second), conditions(pairs))
                    .ifPresent(dropped::add);
        } else {
            cells.add(means(first, second, averaged));
            notes.add(Unpaired.compared(averaged, conditions(first), conditions(second)));
        }
    }

    private List<Plain> pairs(List<Plain> first, List<Plain> second) {
        List<Plain> compared = new ArrayList<>();
        for (Plain one : first) {
            Conditions common = one.conditions().without(ignored());
            second.stream()
                    .filter(other -> other.conditions().without(ignored()).equals(common))
                    .filter(this::isComparable)
                    .forEach(other -> compared.add(compare(one, other, common)));
        }
        return compared;
    }

    /** To nothing there is no ratio. */
    private boolean isComparable(Plain second) {
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
    private FigureCell means(List<Plain> first, List<Plain> second, Averaged averaged) {
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
                first.size() + second.size(),
                caps);
    }

    /** The mean of each person or unit. */
    private static double[] numbers(List<Plain> side, Unit unit, Averaged averaged) {
        Map<Set<String>, List<Double>> members = new LinkedHashMap<>();
        side.forEach(
                plain -> members.computeIfAbsent(averaged.members(List.of(plain.conditions())), k -> new ArrayList<>())
                        .add(plain.unit().convert(plain.value(), unit)));
        return members.values().stream()
                .mapToDouble(m -> m.stream().mapToDouble(x -> x).average().orElseThrow())
                .toArray();
    }

    private static List<Conditions> conditions(List<Plain> plain) {
        return plain.stream().map(Plain::conditions).toList();
    }

    private Plain compare(Plain one, Plain other, Conditions common) {
        int count = one.count() + other.count();
        if (!rule.ratio()) {
            Optional<Double> variance =
                    one.variance().flatMap(a -> other.variance().map(b -> a + b));
            return Plain.of(common, one.value() - other.value(), one.unit(), variance, count);
        }
        double scale = other.unit().convert(1, one.unit());
        double second = scale * other.value();
        Optional<Errors> errors = one.variance()
                .flatMap(a -> other.variance()
                        .map(b -> new RatioErrors(one.value(), Math.sqrt(a), second, scale * Math.sqrt(b))));
        return new Plain(common, one.value() / second, Unit.NONE, Optional.empty(), errors, count);
    }

    private List<FigureCell> combined(List<Plain> plain) {
        boolean ears = rule.ears().filter(Population::isBeyondTheMeasured).isPresent();
        boolean units = rule.units().filter(Population::isBeyondTheMeasured).isPresent();
        if (!ears && !units) {
            return plain.stream().map(FigureCells::cell).toList();
        }
        Set<String> averaged = ears ? Set.of("session", "ear", "head", "side", "unit") : Set.of("session", "unit");
        Map<String, List<Plain>> groups = new TreeMap<>();
        plain.forEach(
                p -> groups.computeIfAbsent(p.conditions().without(averaged).toString(), k -> new ArrayList<>())
                        .add(p));
        return groups.values().stream()
                .map(g -> average(g, ears ? "head" : "unit", averaged, Shared.of(rule)))
                .toList();
    }

    private static FigureCell cell(Plain plain) {
        return new FigureCell(
                plain.conditions(), plain.value(), plain.unit(), plain.errors(), plain.count(), List.of());
    }

    /** First within a head (or unit), then over them: their scatter holds what each figure's uncertainty adds. */
    private static FigureCell average(List<Plain> members, String over, Set<String> averaged, Optional<Double> share) {
        Map<String, List<Plain>> groups = new LinkedHashMap<>();
        members.forEach(m -> groups.computeIfAbsent(m.conditions().get(over).orElse(""), k -> new ArrayList<>())
                .add(m));
        double[] means = groups.values().stream()
                .mapToDouble(g -> g.stream().mapToDouble(Plain::value).average().orElse(0))
                .toArray();
        double mean = Arrays.stream(means).average().orElse(0);
        Conditions conditions = members.get(0).conditions().without(averaged);
        if (means.length == 1) {
            FigureCell one = cell(members.get(0));
            Remark reason = Remark.of("one-" + over);
            return new FigureCell(conditions, mean, one.unit(), one.errors(), members.size(), List.of(reason));
        }
        double squares = Arrays.stream(means).map(m -> (m - mean) * (m - mean)).sum();
        double scale = Math.sqrt(squares / (means.length - 1.0) / means.length);
        Errors ofMean = new MixedErrors(0, List.of(new Scatter(means.length - 1, scale)));
        Errors errors = share.isPresent() ? shared(ofMean, groups.values(), means, share.get()) : ofMean;
        return new FigureCell(conditions, mean, members.get(0).unit(), Optional.of(errors), members.size(), List.of());
    }

    /** A figure of nothing but 1 and 0 says that something was so or not; of a head it was so where it was in every ear. */
    private static Errors shared(Errors ofMean, Collection<List<Plain>> groups, double[] means, double share) {
        boolean counted = groups.stream()
                .flatMap(List::stream)
                .allMatch(p -> p.unit() == Unit.NONE && (p.value() == 0 || p.value() == 1));
        if (!counted) {
            return ShareErrors.normal(ofMean, Arrays.stream(means).boxed().toList(), share, 0);
        }
        List<Double> least = groups.stream()
                .map(g -> g.stream().mapToDouble(Plain::value).min().orElseThrow())
                .toList();
        return ShareErrors.inOrOut(ofMean, least, share);
    }
}
