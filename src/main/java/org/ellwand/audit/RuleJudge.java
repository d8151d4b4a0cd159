package org.ellwand.audit;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.quantity.CellQuantity;
import org.ellwand.words.Remark;

/** Judges one rule about a quantity of cells: finds its readings, has them worked out and decided. */
final class RuleJudge {
    private final AuditOptions options;
    private final String product;
    private final List<Session> sessions;
    private final double confidence;
    private final Doubts doubts;

    RuleJudge(AuditOptions options, String product, List<Session> sessions, double confidence, Doubts doubts) {
        this.doubts = doubts;
        this.options = options;
        this.product = product;
        this.sessions = sessions;
        this.confidence = confidence;
    }

    Judgement judge(Rule written, CellQuantity quantity) throws InputException {
        quantity.check(written);
        Rule rule = quantity.completed(written);
        refuseSpreadBelowZero(rule);
        Preparation preparation = new Preparation(rule, quantity, Subjects.of(rule, quantity, product, sessions));
        if (preparation.ready().isEmpty()) {
            Remark reason = tooSoft(rule, preparation.bare()).orElseGet(() -> nothing(preparation));
            return Judgements.untested(written, reason, Misnamed.notes(rule, product, sessions));
        }
        Worked worked = Worked.of(written, rule, quantity, preparation, options.trials());
        if (worked.tellsNothing()) {
            return Judgements.untested(written, Remark.of("part-beyond"), List.of());
        }
        if (worked.isBeyondNumbers()) {
            return Judgements.untested(written, Remark.of("no-finite-number"), List.of());
        }
        Judgement judgement = new Ruling(worked, confidence, doubts).judgement();
        return judgement.verdict() == Verdict.MARGINAL
                ? tooSoft(rule, preparation.ready())
                        .map(reason -> Judgements.untested(written, reason, judgement.remarks()))
                        .orElse(judgement)
                : judgement;
    }

    private static void refuseSpreadBelowZero(Rule rule) throws InputException {
        boolean spread = rule.statistic().filter(s -> s == Statistic.SPREAD).isPresent();
        if (spread && rule.limit().upper() < 0) {
            throw new InputException(rule.place(), "a spread is 0 dB or more: its limit lies below 0");
        }
    }

    /** What no reading under these sounds can tell is untested, not marginal. */
    private static Optional<Remark> tooSoft(Rule rule, List<Ready> subjects) {
        return Revealing.concerns(rule.quantity()) ? Revealing.of(rule).reason(subjects) : Optional.empty();
    }

    private static Remark nothing(Preparation preparation) {
        return preparation.dropped().isEmpty()
                ? Remark.of("no-reading")
                : Remark.of("no-usable-reading").with("why", new TreeSet<>(preparation.dropped()));
    }
}
