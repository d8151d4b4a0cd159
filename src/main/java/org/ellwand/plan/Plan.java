package org.ellwand.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ellwand.audit.Audit;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.ProductAudit;
import org.ellwand.audit.Verdict;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.TypicalProbeTube;
import org.ellwand.measurement.Uncertainty;

/**
 * What is left to measure of a product.
 *
 * @param product the product and its audit
 * @param decided how many claims need nothing more
 * @param outlooks the others, in the order of the file
 * @param sittings one for each ear and sample that was measured, or one for a first ear; none where nothing is planned
 * @param worn the earlier sessions with the product in place
 */
public record Plan(
        ProductAudit product, long decided, List<Outlook> outlooks, List<Sitting> sittings, List<Session> worn) {
    /**
     * {@return a plan for every product of an audit, in its order}
     *
     * @param audit finished
     * @throws InputException where a rule leaves open which of several readings it speaks of
     */
    public static List<Plan> of(Audit audit) throws InputException {
        List<Plan> plans = new ArrayList<>();
        Repeats repeats = new Repeats(audit.sessions());
        for (ProductAudit product : audit.products()) {
            plans.add(of(product, repeats));
        }
        return plans;
    }

    private static Plan of(ProductAudit product, Repeats repeats) throws InputException {
        String name = product.product().name();
        List<Session> worn = repeats.measured().stream()
                .filter(session -> !Wearer.of(session, name).isEmpty())
                .toList();
        Outlooks needs = new Outlooks(product.product(), repeats, first(worn));
        List<Outlook> outlooks = new ArrayList<>();
        for (ClaimAudit claim : product.claims()) {
            if (!isFirm(claim)) {
                outlooks.add(needs.of(claim));
            }
        }
        List<Wanted> wanted = outlooks.stream()
                .filter(outlook -> outlook.isPlanned() && !outlook.isOfOthers())
                .map(outlook -> new Wanted(outlook.audited().claim(), outlook.insertions()))
                .toList();
        List<Sitting> sittings = new ArrayList<>(Sittings.of(name, worn, repeats.ids(), wanted));
        List<Wanted> ofOthers = outlooks.stream()
                .filter(Outlook::isOfOthers)
                .map(outlook -> new Wanted(outlook.audited().claim(), outlook.insertions()))
                .toList();
        if (!ofOthers.isEmpty()) {
            Optional<Session> like = worn.stream().findFirst();
            sittings.add(SittingPlan.of(name, like, Wearer.another(), worn, ofOthers));
        }
        return new Plan(product, product.claims().size() - outlooks.size(), outlooks, sittings, worn);
    }

    private static boolean isFirm(ClaimAudit claim) {
        return claim.verdict() == Verdict.PASS || claim.verdict() == Verdict.FAIL;
    }

    /** Sizes of an earlier sitting, where it declares some; else those of common practice. */
    private static Uncertainty first(List<Session> worn) {
        return worn.stream()
                .map(Session::uncertainty)
                .filter(Uncertainty.Declared.class::isInstance)
                .findFirst()
                .orElse(new Uncertainty.Declared(TypicalProbeTube.causes(), true));
    }
}
