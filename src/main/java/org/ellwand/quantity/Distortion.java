package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ellwand.acoustics.HarmonicDistortion;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Interval;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.pairing.Source;
import org.ellwand.words.Remark;

/** Harmonic distortion, of the fundamental: {@link HarmonicDistortion}. Every tone that was measured is a cell of its own. */
final class Distortion implements CellQuantity {
    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "harmonic distortion",
                Dimension.SHARE,
                Map.of("harmonics", "a sum over harmonics names them"),
                Keys.ofNumbers(),
                "%",
                "100 · √(sum of the powers of the harmonics / power of the fundamental)");
    }

    @Override
    public Source source(Rule rule) {
        return Source.HARMONICS;
    }

    @Override
    public Rule completed(Rule rule) {
        return Keys.ofOneNumber(rule);
    }

    @Override
    public Optional<Remark> unusable(Joined joined, Rule rule) {
        boolean fundamental = readings(joined.first())
                .allMatch(r -> DistortionFormula.harmonics(r).orders().contains(1));
        return fundamental && !there(joined.first(), rule).isEmpty()
                ? Optional.empty()
                : Optional.of(Remark.of("no-harmonics")
                        .with("session", joined.first().session().id()));
    }

    @Override
    public Optional<Remark> lacking(Cell cell, Rule rule) {
        List<Integer> there = there(cell, rule);
        String missing = asked(rule)
                .filter(order -> !there.contains(order))
                .map(order -> Integer.toString(order))
                .collect(Collectors.joining(", "));
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(Remark.of("missing-harmonics").with("orders", missing));
    }

    @Override
    public Formula formula(Joined joined, Rule rule) {
        return new DistortionFormula(joined.first(), there(joined.first(), rule));
    }

    private static Stream<Integer> asked(Rule rule) {
        Interval orders = Settings.interval(rule, "harmonics");
        return IntStream.rangeClosed((int) orders.lower(), (int) orders.upper()).boxed();
    }

    /** The orders asked for that every reading of the cell has. */
    private static List<Integer> there(Cell cell, Rule rule) {
        return asked(rule)
                .filter(order -> readings(cell)
                        .allMatch(r -> DistortionFormula.harmonics(r).orders().contains(order)))
                .toList();
    }

    private static Stream<Reading> readings(Cell cell) {
        return cell.insertions().stream().map(i -> i.takes().stream()).flatMap(Function.identity());
    }
}
