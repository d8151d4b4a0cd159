package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.acoustics.Band;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Interval;
import org.ellwand.check.Finding;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.claim.Reference;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Figure;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Cell;
import org.ellwand.words.Remark;

/**
 * What findings about the data leave of a verdict. A fault voids only what it could have caused: a leak hides attenuation, so
 * it may have made "at least 15 dB" fail, and cannot have made it pass.
 */
final class Doubts {
    private static final Set<Dimension> LEVELS = Set.of(Dimension.LEVEL, Dimension.LEVEL_A, Dimension.LEVEL_C);

    /** Twice what the sums of two curves differ by where each band is read to 0.5 dB, over seven bands or more. */
    private static final double ABOVE_ERROR_DB = 0.5;

    private final List<Finding> grave;

    /** @param findings about all the data; those that leave readings usable raise no doubt */
    Doubts(List<Finding> findings) {
        grave = findings.stream()
                .filter(f -> f.consequence() == Consequence.UNUSABLE || f.isBoundBeside())
                .toList();
    }

    /**
     * What a rule made of its readings.
     *
     * @param subjects with the bands that were judged
     * @param signInPlace +1 where the quantity grows with the level in place, −1 where it falls
     * @param signInQuiet the same of the level in quiet; 0 where that does not enter it
     * @param usesOpenEar whether the open ear enters it
     * @param confidence of the decision
     */
    record Judged(
            Rule rule,
            List<Ready> subjects,
            double signInPlace,
            double signInQuiet,
            boolean usesOpenEar,
            double confidence) {}

    /** The findings that touch what was judged. */
    List<Finding> touching(Judged judged) {
        return grave.stream()
                .filter(f -> concerns(f, judged))
                .filter(f -> judged.subjects().stream().anyMatch(s -> touches(f, s, judged)))
                .toList();
    }

    /** A drift of levels moves no time, and a level that is none at the eardrum may still be compared with another. */
    private static boolean concerns(Finding finding, Judged judged) {
        Dimension dimension = judged.rule().limit().unit().dimension();
        return switch (finding.about()) {
            case EVERYTHING -> true;
            case FIGURES -> false;
            case LEVELS -> dimension != Dimension.TIME && dimension != Dimension.SHARE;
            case ABSOLUTE_LEVELS ->
                !judged.usesOpenEar()
                        && dimension != Dimension.TIME
                        && dimension != Dimension.SHARE
                        && judged.rule().between().isEmpty();
        };
    }

    /**
     * Those of the findings that touch single figures: what was found about the figure itself, and what makes every level of
     * its session wrong, where it is a level. They err either way.
     */
    List<Finding> of(List<Figure> figures, Rule rule) {
        return grave.stream()
                .filter(f -> figures.stream().anyMatch(figure -> touches(f, figure, rule)))
                .toList();
    }

    private static boolean touches(Finding finding, Figure figure, Rule rule) {
        if (finding.about() == Finding.About.FIGURES) {
            return finding.touches(figure.conditions().with("figure", figure.of()));
        }
        boolean levels =
                finding.about() == Finding.About.LEVELS && finding.reading().isEmpty();
        boolean isLevel = LEVELS.contains(figure.value().unit().dimension());
        return levels && isLevel && rule.between().isEmpty() && finding.touches(figure.conditions());
    }

    /** Those of the findings that could have caused what a rating of a panel came to. */
    List<Finding> causing(List<CurveReading> panel, Interval limit, Verdict verdict, double value) {
        return grave.stream()
                .filter(f -> panel.stream().anyMatch(r -> touches(f, r)))
                .filter(f -> {
                    Way way = way(f.errs());
                    return verdict == Verdict.PASS ? undoesPass(way, limit) : undoesFail(way, limit, value);
                })
                .toList();
    }

    private static boolean touches(Finding finding, CurveReading reading) {
        return finding.touches(reading.conditions())
                && (finding.bands().isEmpty()
                        || reading.spectrum().bandList().stream().anyMatch(band -> speaksOf(finding, band)));
    }

    /** A rating grows with the attenuation. */
    private static Way way(Finding.Errs errs) {
        return new Way(errs != Finding.Errs.INVENTS_ATTENUATION, errs != Finding.Errs.HIDES_ATTENUATION);
    }

    private static boolean touches(Finding finding, Ready subject, Judged judged) {
        return subject.subject().cells().stream()
                        .flatMap(cell -> readings(cell, judged.usesOpenEar()))
                        .anyMatch(r -> finding.touches(r.conditions()))
                && (finding.bands().isEmpty()
                        || subject.bands().isEmpty()
                        || ofReference(finding, judged.rule())
                        || subject.bands().stream().anyMatch(band -> speaksOf(finding, band)));
    }

    private static Stream<Reading> readings(Cell cell, boolean usesOpenEar) {
        Stream<Reading> inPlace = cell.insertions().stream().flatMap(i -> i.takes().stream());
        return usesOpenEar
                ? Stream.of(inPlace, cell.openEar().stream(), cell.field().stream())
                        .flatMap(s -> s)
                : inPlace;
    }

    private static boolean speaksOf(Finding finding, Band band) {
        return finding.bands().stream().anyMatch(hz -> hz >= band.lowerEdgeHz() && hz <= band.upperEdgeHz());
    }

    /** Those of some findings that could have caused a firm verdict. */
    static List<Finding> causing(List<Finding> touching, Judged judged, Decision decision) {
        List<Finding> causing = new ArrayList<>();
        for (Finding finding : touching) {
            Way way = way(finding, judged);
            boolean caused = decision.verdict() == Verdict.PASS
                    ? undoesPass(way, judged.rule().limit()) && !passesStill(finding, judged, decision.point())
                    : decision.verdict() == Verdict.FAIL
                            && undoesFail(
                                    way, judged.rule().limit(), decision.point().value())
                            && (ofReference(finding, judged.rule()) || atItsPoint(finding, decision.point()))
                            && !failsStill(finding, judged, decision.point());
            if (caused) {
                causing.add(finding);
            }
        }
        return causing;
    }

    /** Where the true number may lie, as seen from the one that was found. */
    private record Way(boolean higher, boolean lower) {}

    private static Way way(Finding finding, Judged judged) {
        if (finding.errs() == Finding.Errs.READS_LOW || finding.errs() == Finding.Errs.READS_HIGH) {
            boolean compared = judged.rule().between().isPresent();
            boolean low = finding.errs() == Finding.Errs.READS_LOW;
            return new Way(low || compared, !low || compared);
        }
        Statistic statistic = judged.rule().statistic().orElse(Statistic.MEAN);
        // The product's own noise is read in quiet, which may enter otherwise than the levels in place.
        double sign = finding.isOfOwnNoise() && judged.signInQuiet() != 0 ? judged.signInQuiet() : judged.signInPlace();
        boolean either = finding.errs() == Finding.Errs.EITHER
                || judged.rule().between().isPresent()
                || statistic.comparesBands()
                || ofReference(finding, judged.rule())
                || sign == 0;
        boolean attenuationHigher = finding.errs() == Finding.Errs.HIDES_ATTENUATION;
        boolean higher = attenuationHigher == sign < 0;
        return new Way(either || higher, either || !higher);
    }

    private static boolean undoesPass(Way way, Interval limit) {
        return (way.higher() && limit.hasUpper()) || (way.lower() && limit.hasLower());
    }

    private static boolean undoesFail(Way way, Interval limit, double value) {
        boolean tooLow = limit.hasLower() && (!limit.hasUpper() || value < limit.lower());
        return tooLow ? way.higher() : way.lower();
    }

    /** A fault in some bands did not bring about what another band fails by. */
    private static boolean atItsPoint(Finding finding, Points.One point) {
        return point.hz().isEmpty()
                || finding.bands().isEmpty()
                || finding.bands().contains(point.hz().getAsDouble())
                || (point.lessHz().isPresent()
                        && finding.bands().contains(point.lessHz().getAsDouble()));
    }

    /** Whether it touches the bands that a response is relative to: they enter every other band, the other way round. */
    private static boolean ofReference(Finding finding, Rule rule) {
        return rule.reference()
                .filter(reference -> finding.bands().stream().anyMatch(hz -> isOf(reference, hz)))
                .isPresent();
    }

    private static boolean isOf(Reference reference, double nominalHz) {
        return reference instanceof Reference.MeanOf mean
                ? mean.hz().contains(nominalHz)
                : ((Reference.At) reference).frequencyHz() == nominalHz;
    }

    /** Whether a number would lie beyond its limit even if it were as far from what was read as the fault can have moved it. */
    private static boolean failsStill(Finding finding, Judged judged, Points.One point) {
        Interval limit = judged.rule().limit();
        double moved = movedBy(finding, judged.rule());
        double doubt = 1 - judged.confidence();
        return Double.isFinite(moved)
                && ((limit.hasUpper() && point.errors().atMost(limit.upper() - point.value() + moved) <= doubt)
                        || (isEither(finding)
                                && limit.hasLower()
                                && point.errors().atLeast(limit.lower() - point.value() - moved) <= doubt));
    }

    /** Whether it would lie inside its limit all the same. */
    private static boolean passesStill(Finding finding, Judged judged, Points.One point) {
        Interval limit = judged.rule().limit();
        double moved = movedBy(finding, judged.rule());
        return Double.isFinite(moved)
                && isEither(finding)
                && point.errors().atMost(limit.upper() - point.value() - moved)
                                + point.errors().atLeast(limit.lower() - point.value() + moved)
                                - 1
                        >= judged.confidence();
    }

    private static boolean isEither(Finding finding) {
        return finding.errs() == Finding.Errs.EITHER;
    }

    /**
     * How far a fault can have moved a number, in its unit; infinite where that is not known. Of a noise that stands d dB above room
     * and probe 10 lg(1 − 10^(−d/10)) is theirs at most, where levels are summed.
     */
    private static double movedBy(Finding finding, Rule rule) {
        double figure = finding.measure().map(Finding.Measure::figure).orElse(Double.NaN);
        boolean summed = rule.statistic().filter(s -> s == Statistic.OVERALL).isPresent();
        double above = figure - ABOVE_ERROR_DB;
        return finding.isOfOwnNoise() && summed && above > 0
                ? -10 * Math.log10(1 - Math.pow(10, -above / 10))
                : Double.POSITIVE_INFINITY;
    }

    static Optional<Remark> reason(List<Finding> causing, Verdict without) {
        if (causing.isEmpty()) {
            return Optional.empty();
        }
        String names = named(causing);
        return Optional.of(Remark.of("doubtful-data").with("checks", names).with("without", without.word()));
    }

    /** What a row says where findings touch it and change nothing. */
    static Optional<Remark> note(List<Finding> touching, List<Finding> causing) {
        return touching.isEmpty() || !causing.isEmpty()
                ? Optional.empty()
                : Optional.of(Remark.of("independent-of-findings").with("checks", named(touching)));
    }

    private static String named(List<Finding> findings) {
        return findings.stream()
                .map(f -> f.check() + " in session " + f.session())
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .collect(Collectors.joining(", "));
    }
}
