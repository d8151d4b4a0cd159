package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;
import org.ellwand.claim.Population;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.input.InputException;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.SharedBy;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;
import org.ellwand.quantity.Bandwidth;
import org.ellwand.quantity.CellQuantity;
import org.ellwand.quantity.CurvePart;
import org.ellwand.quantity.ReadingIndex;
import org.ellwand.quantity.SpectralQuantity;
import org.ellwand.words.Remark;

/** The subjects of a rule made ready: readings numbered, bands sorted into those that serve and those that are missing. */
final class Preparation {
    private static final Set<Statistic> OF_BANDS = Set.of(Statistic.EVERY_BAND, Statistic.LOWEST, Statistic.HIGHEST);

    /** Lots have few layouts; of more, those that came first are kept. */
    private static final int MOST_LAYOUTS = 16;

    private final Rule rule;
    private final CellQuantity quantity;
    private final ReadingIndex index = new ReadingIndex();
    private final Surroundings surroundings = new Surroundings();
    private final List<Ready> ready = new ArrayList<>();
    private final List<Ready> bare = new ArrayList<>();
    private final Set<Remark> dropped;
    private final List<Remark> notes;
    private double[][] levelsDb = new double[0][];
    private final List<LaidOut> laidOut = new ArrayList<>();

    /** What was made ready of a layout. */
    private record LaidOut(BandLayout layout, Ready ready) {}

    Preparation(Rule rule, CellQuantity quantity, Subjects.Built built) throws InputException {
        this.rule = rule;
        this.quantity = quantity;
        this.dropped = new LinkedHashSet<>(built.dropped());
        this.notes = built.notes();
        for (Subject subject : built.subjects()) {
            prepare(subject);
        }
    }

    List<Ready> ready() {
        return Collections.unmodifiableList(ready);
    }

    /** Subjects without a band that serves. */
    List<Ready> bare() {
        return Collections.unmodifiableList(bare);
    }

    List<Remark> dropped() {
        return List.copyOf(dropped);
    }

    /** What a reader must know of how the subjects were put together. */
    List<Remark> notes() {
        return notes;
    }

    ReadingIndex index() {
        return index;
    }

    /** The independent draws of all declared causes; those shared by ear or unit only in statements about them. */
    Moves moves() {
        return new Moves(index, surroundings, included());
    }

    /** The unperturbed levels of all readings; not to be changed. */
    double[][] levelsDb() {
        if (levelsDb.length != index.size()) {
            levelsDb = index.levelsDb();
        }
        return levelsDb;
    }

    private Set<SharedBy> included() {
        Set<SharedBy> included = new TreeSet<>(Set.of(SharedBy.SESSION, SharedBy.INSERTION, SharedBy.READING));
        if (rule.ears().filter(Population::isBeyondTheMeasured).isPresent()) {
            included.add(SharedBy.EAR);
        }
        if (rule.units().filter(Population::isBeyondTheMeasured).isPresent()) {
            included.add(SharedBy.UNIT);
        }
        return included;
    }

    private void prepare(Subject subject) throws InputException {
        for (Cell cell : subject.cells()) {
            surroundings.add(cell);
            cell.insertions().forEach(i -> i.takes().forEach(index::of));
            cell.openEar().forEach(index::of);
            cell.field().forEach(index::of);
        }
        if (quantity instanceof SpectralQuantity spectral) {
            prepare(subject, spectral);
        } else {
            ready.add(Ready.ofNumber(subject));
        }
    }

    private void prepare(Subject subject, SpectralQuantity spectral) throws InputException {
        NavigableSet<Resolution> measured = new TreeSet<>();
        for (Cell cell : subject.cells()) {
            for (Insertion insertion : cell.insertions()) {
                for (Reading take : insertion.takes()) {
                    measured.add(CurveReading.of(take).spectrum().resolution());
                }
            }
        }
        refuseFiner(subject, measured.first());
        if (rule.resolution().isEmpty() && measured.size() > 1) {
            dropped.add(Remark.of("unlike-resolutions"));
            return;
        }
        Ready made = bands(subject, rule.resolution().orElse(measured.first()), spectral);
        if (made.bands().isEmpty()) {
            bare.add(made);
            dropped.add(Remark.of(nothing(subject, made))
                    .with("conditions", subject.conditions().toString()));
        } else if (made.bands().size() < 2 && statistic().comparesBands()) {
            dropped.add(Remark.of("one-band")
                    .with("conditions", subject.conditions().toString()));
        } else {
            ready.add(made);
        }
    }

    private static String nothing(Subject subject, Ready made) {
        if (made.missing().stream().anyMatch(band -> made.bound(band) != Bound.MEASURED)) {
            return "near-background";
        }
        boolean measured =
                subject.formula().anyBands(made.resolution()).stream().anyMatch(made.missing()::contains);
        return measured ? "no-partner-bands" : "no-band";
    }

    private void refuseFiner(Subject subject, Resolution coarsest) throws InputException {
        if (rule.resolution().filter(coarsest::isCoarserThan).isPresent()) {
            throw new InputException(
                    rule.place(),
                    "resolution '" + rule.resolution().get().text() + "' is finer than measured: session "
                            + subject.cells().get(0).session().id() + " was measured in " + coarsest.text()
                            + " bands");
        }
    }

    /** Subjects whose readings hold the same bands, all of them measured, are made ready alike. */
    private Ready bands(Subject subject, Resolution resolution, SpectralQuantity spectral) {
        BandLayout layout = BandLayout.of(subject.cells(), resolution);
        for (LaidOut known : laidOut) {
            if (layout.isMeasuredLike(known.layout())) {
                return known.ready().of(subject);
            }
        }
        Ready made = sorted(subject, layout, resolution, spectral);
        if (laidOut.size() < MOST_LAYOUTS) {
            laidOut.add(new LaidOut(layout, made));
        }
        return made;
    }

    private Ready sorted(Subject subject, BandLayout layout, Resolution resolution, SpectralQuantity spectral) {
        TreeSet<Band> any = new TreeSet<>(subject.formula().anyBands(resolution));
        List<Band> asked = Bandwidth.bands(rule.bands().orElseThrow(), resolution, any);
        Set<Band> there = new HashSet<>(subject.formula().having(asked, resolution));
        List<Band> present = new ArrayList<>();
        List<Band> missing = new ArrayList<>();
        Map<Band, Bound> bounds = new HashMap<>();
        BandBounds left = new BandBounds(subject, spectral.parts(rule), resolution);
        for (Band band : asked) {
            boolean bounded = there.contains(band) && !layout.isMeasured();
            Optional<Bound> bound = bounded ? left.of(band) : Optional.of(Bound.MEASURED);
            boolean serves = bound.filter(this::serves).isPresent();
            (there.contains(band) && serves ? present : missing).add(band);
            // Of a band that is bounded from both sides no number is made: either bound says why.
            bounds.put(band, bound.orElse(Bound.AT_MOST));
        }
        return new Ready(subject, resolution, List.copyOf(present), List.copyOf(missing), bounds);
    }

    private Statistic statistic() {
        return rule.statistic().orElseThrow();
    }

    private boolean serves(Bound bound) {
        return bound == Bound.MEASURED
                || (OF_BANDS.contains(statistic()) && rule.between().isEmpty());
    }

    /** How a quantity moves with the levels of some readings: those in place, those in quiet. */
    static double sign(SpectralQuantity spectral, Rule rule, ToDoubleFunction<CurvePart> of) {
        return spectral.parts(rule).stream()
                .mapToDouble(part -> part.sign() * of.applyAsDouble(part))
                .sum();
    }
}
