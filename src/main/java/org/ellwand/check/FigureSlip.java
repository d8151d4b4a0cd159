package org.ellwand.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.ellwand.check.Finding.About;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Figure;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A single figure that lost its decimal point: among three or more of the same thing, samples or repeats, it is ten times the
 * others, or a tenth of them, and they agree among themselves to a factor of two. (A ratio near 10 tells the slip; {@link #RATIO} leaves
 * room for what samples differ by: common practice, no source.) Samples of one product differ by far less, so a sound session is not accused.
 */
final class FigureSlip implements DataCheck {
    private static final double RATIO = 7;
    private static final double AGREE = 2;
    private static final int FEWEST = 3;

    /** Figures that differ in these alone are of the same thing. */
    private static final Set<String> SAMPLES = Set.of("unit", "insertion", "take", "ear", "head", "side");

    @Override
    public String name() {
        return "figures";
    }

    @Override
    public String needs() {
        return "figures in the session";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session).about(About.FIGURES);
        List<Figure> figures = session.figures();
        for (Figure figure : figures) {
            tally.looked();
            List<Double> others = new ArrayList<>();
            for (Figure other : figures) {
                if (!other.equals(figure) && isOfTheSame(figure, other)) {
                    others.add(other.value().in(figure.value().unit()));
                }
            }
            judge(tally, figure, others);
        }
        return tally.done();
    }

    private static boolean isOfTheSame(Figure one, Figure other) {
        return one.of().equals(other.of())
                && one.value().unit().dimension() == other.value().unit().dimension()
                && one.conditions().without(SAMPLES).equals(other.conditions().without(SAMPLES));
    }

    private static void judge(Tally tally, Figure figure, List<Double> others) {
        double value = figure.value().value();
        if (others.size() < FEWEST - 1 || value <= 0 || Collections.min(others) <= 0) {
            return;
        }
        boolean agree = Collections.max(others) <= AGREE * Collections.min(others);
        double median = Curves.median(others);
        double ratio = Math.max(value / median, median / value);
        if (agree && ratio > RATIO) {
            Conditions of = figure.conditions().with("figure", figure.of());
            String unit = figure.value().unit().symbol();
            tally.add(
                    of,
                    List.of(),
                    Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(ratio, RATIO, ""),
                    Remark.of(value > median ? "figure-ten-times" : "figure-a-tenth")
                            .with("value", value)
                            .with("median", median)
                            .with("unit", unit)
                            .with("ratio", ratio));
        }
    }
}
