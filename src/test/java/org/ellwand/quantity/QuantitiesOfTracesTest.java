package org.ellwand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ellwand.quantity.InventedCells.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;
import org.ellwand.input.Place;
import org.ellwand.measurement.Bare;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Step;
import org.ellwand.measurement.Trace;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;

/** Which traces a number is read off, and what is said of those that give none; levels are invented. */
class QuantitiesOfTracesTest {
    private final List<Trace> traces = new ArrayList<>();
    private final List<Reading> found = new ArrayList<>();
    private final List<Remark> dropped = new ArrayList<>();

    /** 101 samples, 0.1 s apart. */
    private QuantitiesOfTracesTest trace(
            String conditions, Optional<Step> step, Unit levelsIn, IntToDoubleFunction levelDb) {
        Map<String, String> said = Map.of("session", "yard", "ear", "left", "device", "Skerry");
        List<Double> times =
                IntStream.rangeClosed(0, 100).mapToObj(i -> i / 10.0).toList();
        List<Double> levels =
                IntStream.rangeClosed(0, 100).mapToObj(levelDb::applyAsDouble).toList();
        traces.add(new Trace(
                Bare.conditions(said, conditions),
                step,
                levelsIn,
                times,
                levels,
                new Place("trace-" + traces.size() + ".csv", 1, 1)));
        return this;
    }

    private QuantitiesOfTracesTest steady(String conditions, double levelDb) {
        return trace(conditions, Optional.empty(), Unit.DB_SPL, i -> levelDb);
    }

    private static Optional<Step> step(double fromDb, double toDb) {
        return Optional.of(new Step(
                new Amount(1, Unit.SECOND, 0), new Amount(fromDb, Unit.DB_SPL, 0), new Amount(toDb, Unit.DB_SPL, 0)));
    }

    private void collect(String stated) {
        Rule rule = rule("quantity: " + stated);
        Session session = Bare.ofTraces("yard", traces);
        found.clear();
        dropped.clear();
        ((CellQuantity) Quantities.named(rule.quantity()))
                .source(rule)
                .collect(session, conditions -> conditions.has("device", "Skerry"), found::add, dropped::add);
    }

    private List<Double> numbers() {
        return found.stream().map(r -> r.numbers()[0]).toList();
    }

    /** Steps are no steady traces, and what is not asked for is not read. */
    @Test
    void aDriftIsReadOffSteadyTracesThatAreWanted() {
        trace("stimulus=tone", Optional.empty(), Unit.DB_SPL, i -> 60 + 0.1 * i)
                .trace("stimulus=tone", step(55, 80), Unit.DB_SPL, i -> 60 + 0.2 * i)
                .trace("device=open ear", Optional.empty(), Unit.DB_SPL, i -> 60 + 0.3 * i);
        collect("level drift, limit: at most 9 dB");
        assertThat(numbers()).hasSize(1);
        assertThat(numbers().get(0)).isCloseTo(8, within(1e-9));
        assertThat(found.get(0).movedBy()).isEmpty();
        assertThat(dropped).isEmpty();
    }

    /** From 66 dB at 1 s it falls by 6 dB in 0.4 s: within 3 dB after 0.2 s, told in milliseconds. */
    @Test
    void stepsUpAndDownAreToldApart() {
        IntToDoubleFunction falling = i -> i < 10 || i > 14 ? 60 : 66 - 1.5 * (i - 10);
        trace("insertion=1", step(55, 80), Unit.DB_SPL, falling);
        collect("attack time, within: 3 dB, limit: at most 300 ms");
        assertThat(numbers()).hasSize(1);
        assertThat(numbers().get(0)).isCloseTo(200, within(1e-6));
        assertThat(found.get(0).movedBy()).contains(Unit.MILLISECOND);
        collect("release time, within: 3 dB, limit: at most 300 ms");
        assertThat(found).isEmpty();
        trace("insertion=1", step(80, 55), Unit.DB_SPL, falling).steady("insertion=1", 60);
        collect("release time, within: 3 dB, limit: at most 300 ms");
        assertThat(found).hasSize(1);
    }

    /** Up and down by 10 dB to its end, it never stays within 3 dB, and the file is named. */
    @Test
    void whatNeverSettlesGivesNoTime() {
        trace("insertion=1", step(55, 80), Unit.DB_SPL, i -> i % 2 == 0 ? 60 : 70);
        collect("attack time, within: 3 dB, limit: at most 300 ms");
        assertThat(found).isEmpty();
        assertThat(dropped).hasSize(1);
        assertThat(dropped.get(0).figures()).containsEntry("file", "trace-0.csv");
    }

    /** Gain is held against the open ear of the same programme, ear and weighting alone. */
    @Test
    void steadinessLooksForItsOpenEar() {
        steady("stimulus=tone", 60)
                .steady("stimulus=other, device=open ear", 70)
                .steady("stimulus=tone, device=open ear, ear=right", 70)
                .steady("stimulus=tone, device=Other plug", 70)
                .trace("stimulus=tone, device=open ear", step(55, 80), Unit.DB_SPL, i -> 70)
                .trace("stimulus=tone, device=open ear", Optional.empty(), Unit.DB_A, i -> 70);
        String steadiness = "gain steadiness, within: 1 dB, limit: at least 10 %";
        collect(steadiness);
        assertThat(found).isEmpty();
        assertThat(dropped).extracting(Remark::key).containsExactly("no-open-ear-trace");
        assertThat(dropped.get(0).figures()).containsEntry("session", "yard");
        steady("stimulus=tone, device=open ear", 70).trace("stimulus=tone", step(55, 80), Unit.DB_SPL, i -> 60);
        collect(steadiness);
        assertThat(numbers()).containsExactly(100.0);
        assertThat(dropped).isEmpty();
        CellQuantity quantity = (CellQuantity) Quantities.named("gain steadiness");
        assertThat(quantity.notes(List.of(), rule("quantity: " + steadiness)))
                .extracting(Remark::key)
                .containsExactly("pauses-count");
    }
}
