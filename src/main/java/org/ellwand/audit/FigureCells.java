package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Population;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Figure;
import org.ellwand.pairing.FigureSelection;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.RatioErrors;
import org.ellwand.statistics.Scatter;
import org.ellwand.words.Remark;

/** Makes the cells of a rule about a figure: repeats averaged, then compared, then averaged over ears or units. */
final class FigureCells {
    private final Rule rule;

    private FigureCells(Rule rule) {
        this.rule = rule;
    }

    static List<FigureCell> of(Rule rule, FigureSelection selection) throws InputException {
        FigureCells cells = new FigureCells(rule);
        List<Plain> plain = rule.between().isPresent()
                ? cells.compared(selection.side(rule, true), selection.side(rule, false))
                : cells.single(selection.select(rule));
        return cells.combined(plain);
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

    private List<Plain> compared(Map<Conditions, List<Figure>> first, Map<Conditions, List<Figure>> second) {
        Set<String> ignored = Set.of(rule.between().orElseThrow().condition(), "session");
        List<Plain> compared = new ArrayList<>();
        for (Plain one : single(first)) {
            for (Plain other : single(second)) {
                if (one.conditions().without(ignored).equals(other.conditions().without(ignored))) {
                    compared.add(compare(one, other, one.conditions().without(ignored)));
                }
            }
        }
        return compared;
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
