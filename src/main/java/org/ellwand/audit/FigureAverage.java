package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Conditions;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.Scatter;
import org.ellwand.words.Remark;

/** The mean of figures over people or units, with what their scatter tells of it, or of a share. */
final class FigureAverage {
    private final Rule rule;
    private final String over;
    private final Set<String> averaged;

    /**
     * @param over {@code head} or {@code unit}
     * @param averaged conditions that a mean has not
     */
    FigureAverage(Rule rule, String over, Set<String> averaged) {
        this.rule = rule;
        this.over = over;
        this.averaged = averaged;
    }

    /** First within a head (or unit), then over them: their scatter holds what each figure's uncertainty adds. */
    FigureCell of(List<PlainFigure> members) {
        Map<String, List<PlainFigure>> groups = new LinkedHashMap<>();
        members.forEach(m -> groups.computeIfAbsent(m.conditions().get(over).orElse(""), k -> new ArrayList<>())
                .add(m));
        double[] means = groups.values().stream()
                .mapToDouble(g ->
                        g.stream().mapToDouble(PlainFigure::value).average().orElse(0))
                .toArray();
        double mean = Arrays.stream(means).average().orElse(0);
        Conditions conditions = members.get(0).conditions().without(averaged);
        if (means.length == 1) {
            FigureCell one = members.get(0).cell(rule);
            Remark reason = Remark.of("one-" + over);
            return new FigureCell(
                    conditions, mean, one.unit(), one.errors(), one.contributions(), members.size(), List.of(reason));
        }
        double squares = Arrays.stream(means).map(m -> (m - mean) * (m - mean)).sum();
        double scale = Math.sqrt(squares / (means.length - 1.0) / means.length);
        Scatter scatter = new Scatter(means.length - 1, scale);
        Errors ofMean = new MixedErrors(0, List.of(scatter));
        Errors errors = Shared.of(rule)
                .map(share -> shared(ofMean, groups.values(), means, share))
                .orElse(ofMean);
        return new FigureCell(
                conditions,
                mean,
                members.get(0).unit(),
                Optional.of(errors),
                List.of(seen(over, scatter)),
                members.size(),
                List.of());
    }

    /** A figure of nothing but 1 and 0 says that something was so or not; of a head it was so where it was in every ear. */
    private static Errors shared(Errors ofMean, Collection<List<PlainFigure>> groups, double[] means, double share) {
        boolean counted = groups.stream()
                .flatMap(List::stream)
                .allMatch(p -> p.unit() == Unit.NONE && (p.value() == 0 || p.value() == 1));
        if (!counted) {
            return ShareErrors.normal(ofMean, Arrays.stream(means).boxed().toList(), share, 0);
        }
        List<Double> least = groups.stream()
                .map(g -> g.stream().mapToDouble(PlainFigure::value).min().orElseThrow())
                .toList();
        return ShareErrors.inOrOut(ofMean, least, share);
    }

    /** The scatter over people or units, as a cause. */
    static Contribution seen(String over, Scatter scatter) {
        return new Contribution(
                "observed scatter", over + "s", scatter.scale(), OptionalInt.of(scatter.degreesOfFreedom()));
    }
}
