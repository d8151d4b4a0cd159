package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.audit.Audit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.audit.ProductAudit;
import org.ellwand.claim.Statistic;
import org.ellwand.measurement.Conditions;

/** A claim about many settings, each with many insertions. Numbers are invented. */
final class ManyCells {
    private ManyCells() {}

    /** The figures of a claim that was judged under settings of these names, each in one ear. */
    static SortedMap<String, String> drawn(int settings, int insertions) {
        List<CellResult> cells = new ArrayList<>();
        for (int i = 0; i < settings; i++) {
            cells.add(cell("setting-" + (i + 1), 12 + 1.1 * i, insertions));
        }
        return drawn(cells);
    }

    static SortedMap<String, String> drawn(List<CellResult> cells) {
        Audit one = SampleAudit.audit();
        ProductAudit product = one.products().get(0);
        ClaimAudit claim = product.claims().get(0);
        Judgement plain = new Judgement(
                SampleRules.attenuation("plain", Statistic.MEAN, Interval.of(15, 21, Unit.DB)),
                "text",
                claim.verdict(),
                OptionalDouble.of(0.9),
                OptionalDouble.of(cells.get(0).value()),
                OptionalDouble.of(0),
                Optional.of(
                        SampleCells.point(OptionalDouble.empty(), cells.get(0).value(), 0.5, 0.9)),
                OptionalDouble.of(0.5),
                OptionalDouble.of(cells.get(0).value() - 1),
                OptionalDouble.of(cells.get(0).value() + 1),
                List.of(),
                cells,
                List.of());
        ClaimAudit many = new ClaimAudit(claim.claim(), Optional.of(plain), List.of(), List.of());
        return FigureSamples.files(new Audit(
                one.inputs(), List.of(new ProductAudit(product.product(), List.of(many))), one.sessions(), List.of()));
    }

    static CellResult cell(String setting, double meanDb, int insertions) {
        CellResult shape = SampleCells.curve("left", "pink-94", meanDb, 0.5, 0.9);
        List<List<Double>> curves = new ArrayList<>();
        for (int i = 0; i < insertions; i++) {
            double off = 0.1 * (i - insertions / 2.0);
            curves.add(shape.bands().stream().map(band -> band.value() + off).toList());
        }
        return of(setting, meanDb, shape.bands(), curves, Bound.MEASURED);
    }

    static CellResult of(String setting, double value, List<Point> bands, List<List<Double>> insertions, Bound bound) {
        return new CellResult(
                Conditions.of(new TreeMap<>(Map.of("ear", "left", "setting", setting))),
                Math.max(1, insertions.size()),
                value,
                bound,
                OptionalDouble.of(0.5),
                OptionalDouble.of(0.9),
                bands,
                List.of(),
                List.of(),
                insertions,
                List.of());
    }
}
