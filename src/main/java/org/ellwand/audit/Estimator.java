package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.SharedBy;
import org.ellwand.pairing.Cell;
import org.ellwand.quantity.Computation;
import org.ellwand.quantity.Formula;
import org.ellwand.quantity.ReadingIndex;
import org.ellwand.words.Remark;

/**
 * Finds what moves the judged numbers of a subject: the effects of the declared causes, and the scatter of repeats where
 * none is declared or where it is larger than declared.
 *
 * <p>Declared sizes rule where a cause shared by insertion is declared (JCGM 100:2008, 4.2.4: a pooled figure says more
 * than three repeats). The scatter of each judged number over the insertions is then tested against them ({@link ScatterTest}).
 */
final class Estimator {
    private final ReadingIndex index;
    private final double[][] levelsDb;
    private final ScatterTest scatterTest;
    private final Moves moves;
    private final boolean many;
    private final Map<Pattern, Declared> known = new HashMap<>();

    /** @param many whether there are so many subjects that their factors are not to be kept */
    Estimator(ReadingIndex index, double[][] levelsDb, Moves moves, boolean many, int claimPoints) {
        this.index = index;
        this.levelsDb = levelsDb;
        this.scatterTest = new ScatterTest(claimPoints);
        this.moves = moves;
        this.many = many;
    }

    /**
     * The estimates of one subject.
     *
     * @param computation the judged numbers, or the inner ones of a staged computation
     */
    Estimates estimate(Subject subject, Computation computation, Formula.Task task) {
        return new Work(subject, computation, task).estimate();
    }

    private static Factors.Put put(Moves moves, boolean commonOnly, Subject subject, int[] readings) {
        return (commonOnly ? moves.common(subject.cells()) : moves.all()).of(readings);
    }

    /** The working of one subject. */
    private final class Work {
        private final Subject subject;
        private final Computation computation;
        private final int[] readings;
        private final Supplier<Sensitivity> sensitivity;
        private final double[] value;
        private final RepeatNumbers repeated;
        private final ObservedScatter seen;
        private final boolean commonOnly;
        private final Supplier<Factors.Put> mine;
        private final Supplier<Everybody> everybody;
        private final Declared declared;
        private Effects effect;
        private final List<Remark> notes = new ArrayList<>();
        private double[][] members = new double[0][];

        Work(Subject subject, Computation computation, Formula.Task task) {
            this.subject = subject;
            this.computation = computation;
            readings = index.positions(readings(subject));
            value = new double[computation.size()];
            computation.compute(levelsDb, value);
            sensitivity = once(() -> Sensitivity.of(
                    computation, levelsDb, Arrays.stream(readings).boxed().toList()));
            repeated = new RepeatNumbers(subject, task, index, levelsDb, value.length);
            seen = new ObservedScatter(
                    value, computation.isLinear() || subject.repeats().size() != 1);
            // Of a mean over people or products only what is common to all stays; see population.
            commonOnly = subject.isPopulation() && computation.isLinear();
            mine = once(() -> put(moves, commonOnly, subject, readings));
            everybody = once(() -> Everybody.of(subject, index));
            declared = subject.isPopulation()
                    ? declared()
                    : Pattern.of(subject, computation, readings, index, moves.surroundings())
                            .map(pattern -> known.computeIfAbsent(pattern, p -> declared()))
                            .orElseGet(this::declared);
            effect = declared.effects();
        }

        private Declared declared() {
            List<Factor> factors = mine.get().all();
            Effects effects = Effects.of(
                    value.length, factors.size(), f -> sensitivity.get().effects(factors.get(f)));
            return new Declared(own(), effects, mine.get().origins());
        }

        private List<Reading> own() {
            return Arrays.stream(readings).mapToObj(index::at).toList();
        }

        Estimates estimate() {
            for (Repeats repeats : subject.repeats()) {
                if (repeats.kind() == Repeats.Kind.INSERTIONS) {
                    insertions(repeats);
                } else {
                    population(repeats);
                }
            }
            if (subject.isPopulation()) {
                keepCommon();
            }
            openEarTakes();
            return new Estimates(
                    computation,
                    value,
                    source(),
                    originSource(),
                    effect,
                    declared.effects(),
                    seen.groups(),
                    seen.observed(),
                    seen.centreShift(),
                    members,
                    notes);
        }

        /** Holds on to no more than it needs to put the factors of one of many subjects together again. */
        private Supplier<List<Factor>> source() {
            if (!many) {
                return () -> mine.get().all();
            }
            Moves again = moves;
            int[] of = readings;
            boolean common = commonOnly;
            Subject worn = subject;
            return () -> put(again, common, worn, of).all();
        }

        private Supplier<Origins> originSource() {
            Declared of = declared;
            List<Reading> own = own();
            return () -> of.origins(own);
        }

        private void insertions(Repeats repeats) {
            if (repeats.count() < 2) {
                return;
            }
            double[][] x = repeated.of(repeats);
            boolean declared = true;
            for (Cell cell : subject.cells()) {
                declared &= Surroundings.declares(cell, SharedBy.INSERTION) || !isRepeatedIn(repeats, cell);
            }
            double[][] variance = declared
                    ? this.declared.variance(
                            subject.repeats().indexOf(repeats),
                            () -> repeated.declaredVariance(repeats, mine.get().all(), sensitivity.get()))
                    : new double[0][];
            boolean[] replaced = new boolean[value.length];
            int larger = 0;
            for (int p = 0; p < value.length; p++) {
                boolean exceeds = declared && scatterTest.exceeds(variance, x, p);
                replaced[p] = !declared || exceeds;
                larger += exceeds ? 1 : 0;
            }
            if (larger > 0) {
                notes.add(larger(repeats, larger));
            }
            replace(repeats, x, replaced);
        }

        private boolean isRepeatedIn(Repeats repeats, Cell cell) {
            return repeats.members().stream().anyMatch(member -> owns(member, cell));
        }

        private boolean owns(Repeats.Member member, Cell cell) {
            return cell.insertions().stream().flatMap(i -> i.takes().stream()).anyMatch(member.readings()::contains);
        }

        private Remark larger(Repeats repeats, int points) {
            return value.length == 1
                    ? Remark.of("more-scatter").with("insertions", repeats.count())
                    : Remark.of("more-scatter-at-points")
                            .with("points", points)
                            .with("of", value.length)
                            .with("insertions", repeats.count());
        }

        /** Puts the observed scatter in the place of the insertion and reading causes of the readings in place. */
        private void replace(Repeats repeats, double[][] x, boolean[] replaced) {
            boolean any = false;
            for (boolean one : replaced) {
                any |= one;
            }
            if (!any) {
                return;
            }
            BitSet own = new BitSet();
            repeats.members().forEach(m -> own.or(index.set(m.readings())));
            seen.take(repeats, x, replaced, own);
            List<Factor> factors = mine.get().all();
            effect = effect.only((p, f) -> !replaced[p]
                    || !RepeatNumbers.scatters(factors.get(f))
                    || !factors.get(f).entries().areOf(own));
        }

        /** Scatter between heads (or units) holds what insertions and readings add; what is common to all stays. */
        private void population(Repeats repeats) {
            if (repeats.count() < 2) {
                return;
            }
            double[][] x = repeated.of(repeats);
            members = x;
            BitSet own = new BitSet();
            for (Repeats.Member member : repeats.members()) {
                for (Reading reading : member.readings()) {
                    if (reading.isInPlace()) {
                        own.set(index.of(reading));
                    }
                }
            }
            boolean[] all = new boolean[value.length];
            Arrays.fill(all, true);
            seen.take(repeats, x, all, own);
        }

        /**
         * What moves everybody on a side stays, as far as the other side does not take it away: what a session shares, the
         * error of an open ear that all of them are held against, and what the one ear or the one unit shares that all have.
         */
        private void keepCommon() {
            List<Factor> factors = mine.get().all();
            Set<Factor> common = factors.stream()
                    .filter(f -> f.sharedBy() != SharedBy.INSERTION)
                    .filter(f -> everybody.get().shares(f.readings()))
                    .collect(Collectors.toCollection(() -> Collections.newSetFromMap(new IdentityHashMap<>())));
            effect = effect.only((p, f) -> common.contains(factors.get(f)));
        }

        private void openEarTakes() {
            OpenEarScatter scatter = new OpenEarScatter(index, levelsDb, subject, seen.covered(), sensitivity);
            OpenEarScatter.takes(subject).stream()
                    .filter(this::isOfAll)
                    .map(scatter::of)
                    .forEach(seen::add);
        }

        /** The open ears of people are their own, and how they scatter is seen; that of a simulator serves all units. */
        private boolean isOfAll(OpenEarScatter.Takes open) {
            BitSet takes = new BitSet();
            open.readings().forEach(take -> takes.set(index.of(take)));
            return !subject.isPopulation() || everybody.get().shares(takes);
        }
    }

    /** What is worked out where it is asked for, and kept. */
    private static <T> Supplier<T> once(Supplier<T> worker) {
        List<T> kept = new ArrayList<>(1);
        return () -> {
            if (kept.isEmpty()) {
                kept.add(worker.get());
            }
            return kept.get(0);
        };
    }

    private static List<Reading> readings(Subject subject) {
        List<Reading> readings = new ArrayList<>();
        for (Cell cell : subject.cells()) {
            cell.insertions().forEach(insertion -> readings.addAll(insertion.takes()));
            readings.addAll(cell.openEar());
            readings.addAll(cell.field());
        }
        return readings;
    }
}
