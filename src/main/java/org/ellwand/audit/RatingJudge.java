package org.ellwand.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import org.ellwand.acoustics.AttenuationTable;
import org.ellwand.acoustics.Bound;
import org.ellwand.check.Finding;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.pairing.PanelSelection;
import org.ellwand.quantity.Panel;
import org.ellwand.quantity.Rating;
import org.ellwand.quantity.RatingMethod;
import org.ellwand.words.Figures;
import org.ellwand.words.Remark;

/**
 * Judges a rule about a rating by simple acceptance: a calculation from given numbers has no spread of its own, so the
 * probability is 1 or 0.
 */
final class RatingJudge {
    private static final Remark NO_CERTIFICATE = Remark.of("no-certificate");

    private final PanelSelection selection;
    private final String product;
    private final List<Session> sessions;
    private final Rating rating;
    private final Doubts doubts;

    RatingJudge(String product, List<Session> sessions, Rating rating, Doubts doubts) {
        this.doubts = doubts;
        this.selection = new PanelSelection(product, sessions);
        this.product = product;
        this.sessions = sessions;
        this.rating = rating;
    }

    /** @throws InputException where the rule asks for a rating of what none can be computed from */
    Judgement judge(Rule rule) throws InputException {
        return rule.table().isEmpty() ? ofPanel(rule) : ofTable(rule);
    }

    private Judgement ofTable(Rule rule) throws InputException {
        AttenuationTable table = rating.table(rule);
        List<Remark> notes = new ArrayList<>();
        notes.add(Remark.of("printed-table"));
        omitted(rule, table.byHz().keySet()).ifPresent(notes::add);
        return record(rule, rating.ofDb(rule, table), Conditions.of(Map.of()), 0, notes);
    }

    private Judgement ofPanel(Rule rule) throws InputException {
        SortedMap<String, List<CurveReading>> subjects = selection.select(rule);
        if (subjects.isEmpty()) {
            return unmeasured(rule);
        }
        Panel panel = Panel.of(subjects);
        List<Integer> missing = rating.method(rule).frequenciesHz().stream()
                .filter(hz -> !panel.frequenciesHz().contains(hz)
                        && !rating.method(rule).isOptional(hz))
                .toList();
        if (!missing.isEmpty()) {
            return Judgements.untested(rule, missing(missing, rule));
        }
        if (subjects.size() == 1) {
            return Judgements.untested(rule, Remark.of("one-subject"));
        }
        return doubted(ofPanel(rule, panel, common(subjects)), subjects);
    }

    /** What the data say of themselves may undo it. */
    private Judgement doubted(Judgement judgement, SortedMap<String, List<CurveReading>> subjects) {
        List<CurveReading> panel =
                subjects.values().stream().flatMap(List::stream).toList();
        List<Finding> causing = doubts.causing(
                panel,
                judgement.rule().limit(),
                judgement.verdict(),
                judgement.value().orElseThrow());
        return Doubts.reason(causing, judgement.verdict())
                .map(reason -> judgement.with(Verdict.MARGINAL, reason))
                .orElse(judgement);
    }

    private Judgement ofPanel(Rule rule, Panel panel, Conditions common) {
        List<Remark> notes = new ArrayList<>();
        notes.add(Remark.of("panel").with("subjects", panel.subjects().size()).with("trials", panel.trials()));
        omitted(rule, panel.frequenciesHz()).ifPresent(notes::add);
        return record(rule, rating.ofDb(rule, panel), common, panel.trials(), notes);
    }

    private Judgement unmeasured(Rule rule) throws InputException {
        if (selection.hasOtherCurvesOnly()) {
            throw new InputException(
                    rule.place(),
                    "a rating needs the hearing thresholds of a panel, with and without the product, by the standard"
                            + " procedure; what was measured of '" + product + "' is levels at a microphone, whose"
                            + " insertion loss is another quantity and is never turned into a rating: give the maker's"
                            + " own 'table', or the attenuation of each subject ('layout: attenuation'), or say"
                            + " 'untested because'");
        }
        return Judgements.untested(rule, Remark.of("no-subjects"), Misnamed.notes(rule, product, sessions));
    }

    private Remark missing(List<Integer> missingHz, Rule rule) {
        return Remark.of("missing-bands-of-method")
                .with("hz", missingHz)
                .with("method", rating.method(rule).text());
    }

    private Optional<Remark> omitted(Rule rule, Set<Integer> frequenciesHz) {
        return rating.method(rule).frequenciesHz().stream()
                .filter(hz -> !frequenciesHz.contains(hz))
                .findFirst()
                .map(hz -> Remark.of("computed-without")
                        .with("hz", hz)
                        .with("method", rating.method(rule).text()));
    }

    /** The conditions that all trials share. */
    private static Conditions common(SortedMap<String, List<CurveReading>> subjects) {
        List<Conditions> all = subjects.values().stream()
                .flatMap(List::stream)
                .map(CurveReading::conditions)
                .toList();
        Set<String> differing = new HashSet<>();
        all.forEach(c -> c.values().keySet().stream()
                .filter(name -> all.stream().anyMatch(o -> !o.get(name).equals(c.get(name))))
                .forEach(differing::add));
        return all.get(0).without(differing);
    }

    private Judgement record(Rule rule, double valueDb, Conditions conditions, int trials, List<Remark> notes) {
        RatingMethod method = rating.method(rule);
        boolean met = method.meets(valueDb, rule.limit());
        OptionalDouble value = OptionalDouble.of(valueDb);
        OptionalDouble probability = OptionalDouble.of(met ? 1 : 0);
        OptionalDouble none = OptionalDouble.of(0);
        Point point = new Point(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                valueDb,
                none,
                value,
                value,
                probability,
                Bound.MEASURED);
        CellResult cell = new CellResult(
                conditions,
                trials,
                valueDb,
                Bound.MEASURED,
                none,
                probability,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        notes.add(compared(method, valueDb));
        notes.add(NO_CERTIFICATE);
        return new Judgement(
                rule,
                RuleText.of(rule),
                met ? Verdict.PASS : Verdict.FAIL,
                probability,
                value,
                none,
                Optional.of(point),
                none,
                value,
                value,
                List.of(),
                List.of(cell),
                List.copyOf(notes));
    }

    private static Remark compared(RatingMethod method, double valueDb) {
        return Remark.of(method.isOpen(valueDb) ? "compared-half" : "compared-as-computed")
                .with("value", Figures.rounded(valueDb, 2))
                .with("whole", Figures.plain(method.roundedDb(valueDb)));
    }
}
