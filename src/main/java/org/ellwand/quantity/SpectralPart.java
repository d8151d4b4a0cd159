package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.claim.Reference;

/** A curve part with its places looked up once. */
final class SpectralPart {
    private final double sign;
    private final List<Term> terms = new ArrayList<>();
    private final double[] constant;
    private boolean sumsBands;
    private final Optional<ReferenceTerm> reference;

    SpectralPart(CurvePart part, Roles roles, Formula.Task task, ReadingIndex index) {
        sign = part.sign();
        addTerm(part.inPlace(), roles.inPlace(), task.bands(), index);
        addTerm(part.openEar(), roles.openEar(), task.bands(), index);
        addTerm(part.field(), roles.field(), task.bands(), index);
        addTerm(part.quiet(), roles.quiet(), task.bands(), index);
        constant = constants(part.constant(), task.bands());
        reference = part.reference().map(r -> new ReferenceTerm(part, roles, task, r, index));
    }

    private void addTerm(double factor, Curve curve, List<Band> bands, ReadingIndex index) {
        if (factor != 0) {
            terms.add(new Term(factor, curve.at(bands, index)));
            sumsBands |= curve.sumsBands();
        }
    }

    double sign() {
        return sign;
    }

    boolean sumsBands() {
        return sumsBands;
    }

    IntStream readings() {
        return IntStream.concat(
                terms.stream().flatMapToInt(term -> term.curve().readings()),
                reference.stream().flatMapToInt(r -> r.part.readings()));
    }

    void addSlopes(double factor, int bands, Curve.Slopes slopes) {
        terms.forEach(term -> term.curve().addSlopes(factor * term.factor(), slopes));
        reference.ifPresent(r ->
                r.part.addSlopes(-factor / r.scratch.length, r.scratch.length, (reading, at, b, slope) -> {
                    for (int band = 0; band < bands; band++) {
                        slopes.add(reading, at, band, slope);
                    }
                }));
    }

    void addShape(Computation.Shape shape) {
        shape.number(sign);
        shape.number(terms.size());
        for (Term term : terms) {
            shape.number(term.factor());
            term.curve().addShape(shape);
        }
        reference.ifPresent(r -> {
            shape.number(r.scratch.length);
            r.part.addShape(shape);
        });
    }

    void compute(double[][] levelsDb, double[] out) {
        System.arraycopy(constant, 0, out, 0, out.length);
        for (Term term : terms) {
            term.curve().addTo(out, term.factor(), levelsDb);
        }
        if (reference.isPresent()) {
            double level = reference.get().level(levelsDb);
            for (int b = 0; b < out.length; b++) {
                out[b] -= level;
            }
        }
    }

    /** A curve with its factor. */
    private record Term(double factor, Curve.Located curve) {}

    /** The mean level of a part over its reference bands. */
    private static final class ReferenceTerm {
        private final SpectralPart part;
        private final double[] scratch;

        ReferenceTerm(CurvePart part, Roles roles, Formula.Task task, Reference reference, ReadingIndex index) {
            List<Band> bands = SpectralComputation.referenceBands(reference, task.resolution());
            CurvePart absolute = new CurvePart(
                    1, part.inPlace(), part.openEar(), part.field(), part.quiet(), part.constant(), Optional.empty());
            this.part = new SpectralPart(
                    absolute,
                    roles,
                    new Formula.Task(task.resolution(), bands, task.outcome(), task.weighting()),
                    index);
            scratch = new double[bands.size()];
        }

        double level(double[][] levelsDb) {
            part.compute(levelsDb, scratch);
            return Arrays.stream(scratch).sum() / scratch.length;
        }
    }

    private static double[] constants(Optional<Spectrum> constant, List<Band> bands) {
        if (constant.isEmpty()) {
            return new double[bands.size()];
        }
        return bands.stream()
                .mapToDouble(b -> constant.flatMap(
                                c -> TargetCurve.in(b.resolution(), c).at(b))
                        .map(Spectrum.Level::levelDb)
                        .orElse(0.0))
                .toArray();
    }
}
