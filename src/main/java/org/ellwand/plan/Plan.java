package org.ellwand.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
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
 * @param measured ids of all earlier sessions
 * @param unsaid what claims must say before the sittings are audited
 */
public record Plan(
        ProductAudit product,
        long decided,
        List<Outlook> outlooks,
        List<Sitting> sittings,
        List<Session> worn,
        Set<String> measured,
        List<Unsaid> unsaid) {
    /**
     * {@return a plan for every product of an audit, in its order}
     *
     * @param audit finished
     * @throws InputException where a rule leaves open which of several readings it speaks of
     */
    public static List<Plan> of(Audit audit) throws InputException {
        Trials trials = new Trials(audit.sessions());
        List<Open> products = new ArrayList<>();
        for (ProductAudit product : audit.products()) {
            products.add(Open.of(product, trials));
        }
        trials.tell(products.stream()
                .flatMap(product -> product.outlooks().asking().stream())
                .toList());
        return products.stream().map(product -> product.plan(trials.ids())).toList();
    }

    /** A product whose open claims are yet to be told what is said of them from more insertions. */
    private record Open(ProductAudit product, List<Session> worn, Outlooks outlooks, List<Supplier<Outlook>> ofClaims) {
        static Open of(ProductAudit product, Trials trials) throws InputException {
            String name = product.product().name();
            List<Session> worn = trials.measured().stream()
                    .filter(session -> !Wearer.of(session, name).isEmpty())
                    .toList();
            Outlooks outlooks = new Outlooks(product.product(), trials, first(worn));
            List<Supplier<Outlook>> ofClaims = new ArrayList<>();
            for (ClaimAudit claim : product.claims()) {
                if (!isFirm(claim)) {
                    ofClaims.add(outlooks.of(claim));
                }
            }
            return new Open(product, worn, outlooks, ofClaims);
        }

        Plan plan(Set<String> measured) {
            List<Outlook> told = ofClaims.stream().map(Supplier::get).toList();
            List<Wanted> wanted = wanted(told, outlook -> outlook.isPlanned() && !outlook.isOfOthers());
            List<Unsaid> unsaid = Unsaid.in(product.product().name(), wanted, product.claims(), worn);
            return new Plan(
                    product,
                    product.claims().size() - told.size(),
                    told,
                    sittings(told, Unsaid.said(wanted, unsaid), measured),
                    worn,
                    measured,
                    unsaid.stream().filter(Unsaid::isToBeSaid).toList());
        }

        private List<Sitting> sittings(List<Outlook> told, List<Wanted> wanted, Set<String> measured) {
            String name = product.product().name();
            List<Sitting> sittings = new ArrayList<>(Sittings.of(name, worn, measured, wanted));
            List<Wanted> ofOthers = wanted(told, Outlook::isOfOthers);
            if (!ofOthers.isEmpty()) {
                Optional<Session> like = worn.stream().findFirst();
                sittings.add(new SittingPlan(name, like, worn, ofOthers).of(Wearer.another()));
            }
            return sittings;
        }

        private static List<Wanted> wanted(List<Outlook> told, Predicate<Outlook> which) {
            return told.stream()
                    .filter(which)
                    .map(outlook -> new Wanted(outlook.audited().claim(), outlook.insertions()))
                    .toList();
        }
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
