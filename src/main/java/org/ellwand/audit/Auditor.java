package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ellwand.check.Inspection;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Waiver;
import org.ellwand.input.InputException;
import org.ellwand.input.Problem;
import org.ellwand.input.Problems;
import org.ellwand.measurement.Session;
import org.ellwand.quantity.CellQuantity;
import org.ellwand.quantity.Quantities;
import org.ellwand.quantity.Quantity;
import org.ellwand.quantity.Rating;
import org.ellwand.words.Remark;

/** Holds every claim against the readings. */
public final class Auditor {
    private final AuditOptions options;

    /**
     * An auditor.
     *
     * @param options how much is drawn
     */
    public Auditor(AuditOptions options) {
        this.options = options;
    }

    /**
     * {@return every claim of the products, judged}
     *
     * @param products with their claims
     * @param sessions what was measured, of these products and of others
     * @param inputs what was read, for the record
     * @throws InputException where a rule does not fit the readings (several settings match and it names none, …); all
     *     such rules are reported together
     */
    public Audit audit(List<Product> products, List<Session> sessions, List<Audit.Input> inputs) throws InputException {
        return audit(products, sessions, Inspection.of(sessions).against(products), inputs);
    }

    /**
     * {@return the same where the sessions were inspected before, to judge more claims by them}
     *
     * @param products with their claims
     * @param sessions what was measured, as it was read
     * @param inspection of these sessions
     * @param inputs what was read, for the record
     * @throws InputException as above
     */
    public Audit audit(List<Product> products, List<Session> sessions, Inspection inspection, List<Audit.Input> inputs)
            throws InputException {
        Doubts doubts = new Doubts(inspection.findings());
        Problems problems = new Problems();
        List<ProductAudit> audits = new ArrayList<>();
        List<Outcome> outcomes = products.stream()
                .flatMap(product -> product.claims().stream().map(claim -> new Asked(product, claim)))
                .toList()
                .parallelStream()
                .map(asked -> judge(asked.product(), asked.claim(), inspection.sessions(), doubts))
                .toList();
        outcomes.forEach(o -> problems.addAll(o.problems()));
        int judged = 0;
        for (Product product : products) {
            List<Outcome> own =
                    outcomes.subList(judged, judged + product.claims().size());
            judged += own.size();
            audits.add(new ProductAudit(
                    product, own.stream().flatMap(o -> o.claim().stream()).toList()));
        }
        problems.throwIfAny();
        return new Audit(inputs, audits, sessions, inspection.findings());
    }

    private record Asked(Product product, Claim claim) {}

    /** A judged claim, or why it cannot be judged. Claims share nothing but what is immutable, so their order is free. */
    private record Outcome(Optional<ClaimAudit> claim, List<Problem> problems) {}

    private Outcome judge(Product product, Claim claim, List<Session> sessions, Doubts doubts) {
        try {
            Optional<Judgement> plain = Optional.empty();
            if (claim.rule().isPresent()) {
                plain = Optional.of(judge(product, claim.rule().get(), sessions, doubts));
            }
            List<Judgement> otherwise = new ArrayList<>();
            for (Rule rule : claim.otherwise()) {
                otherwise.add(judge(product, rule, sessions, doubts));
            }
            ClaimAudit audit = new ClaimAudit(claim, plain, otherwise, notes(claim, plain, otherwise));
            return new Outcome(Optional.of(audit), List.of());
        } catch (InputException e) {
            List<Problem> problems = e.problems().stream()
                    .map(p -> new Problem(p.place(), "claim '" + claim.id() + "': " + p.text()))
                    .toList();
            return new Outcome(Optional.empty(), problems);
        }
    }

    private Judgement judge(Product product, Rule rule, List<Session> sessions, Doubts doubts) throws InputException {
        Quantity quantity = Quantities.named(rule.quantity());
        Shared.check(rule);
        if (quantity instanceof Rating rating) {
            return new RatingJudge(product.name(), sessions, rating, doubts).judge(rule);
        }
        return quantity instanceof CellQuantity ofCells
                ? new RuleJudge(options, product.name(), sessions, product.confidence(), doubts).judge(rule, ofCells)
                : new FigureJudge(options, product.name(), sessions, product.confidence(), doubts).judge(rule);
    }

    private static List<Remark> notes(Claim claim, Optional<Judgement> plain, List<Judgement> otherwise) {
        List<Remark> notes = new ArrayList<>(agreement(plain, otherwise));
        claim.waiver().ifPresent(waiver -> notes.add(waived(waiver)));
        return List.copyOf(notes);
    }

    private static Remark waived(Waiver waiver) {
        return Remark.of("waived")
                .with("until", waiver.until().toString())
                .with("owner", waiver.owner())
                .with("reason", waiver.reason());
    }

    private static List<Remark> agreement(Optional<Judgement> plain, List<Judgement> otherwise) {
        if (plain.isEmpty() || otherwise.isEmpty()) {
            return List.of();
        }
        Verdict verdict = plain.get().verdict();
        List<String> differing = otherwise.stream()
                .filter(j -> j.verdict() != verdict)
                .map(j -> j.rule().name() + " (" + j.verdict().word() + ")")
                .toList();
        return List.of(
                differing.isEmpty()
                        ? Remark.of("same-under-all").with("rules", otherwise.size() + 1)
                        : Remark.of("differs-under").with("rules", differing));
    }
}
