package org.ellwand.plan;

import java.util.OptionalDouble;
import java.util.Set;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.audit.Verdict;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.input.InputException;
import org.ellwand.words.Remark;

/** How many insertions a claim wants that is open for want of them, and how often these will decide. */
record MoreInsertions(Product product, Trial trial) {
    /** A sitting that decides more often than not is worth its while where none decides as often as is wanted. */
    private static final double WORTH = 0.5;

    private static final int FEW = 4;

    /** Reasons that a further sitting alone takes away. */
    private static final Set<String> OF_SIZE =
            Set.of("too-few-insertions", "on-the-limit", "on-the-limit-however-many", "too-wide");

    Outlook of(ClaimAudit audited, Judgement plain) throws InputException {
        double value = plain.point().map(Point::value).orElse(plain.value().orElseThrow());
        Needs needs = new Needs(plain, product.confidence());
        int firm = firm(audited.claim());
        Judgement judged = trial.with(audited.claim(), Math.min(firm, Outlooks.MOST));
        if (firm > Outlooks.MOST && !isOfSize(judged)) {
            // Their number would do: something else, such as a fault of a reading, stands in the way.
            return Outlooks.complete(audited);
        }
        Uncertain u = u(audited.claim());
        Chance chance = chance(needs.chance(), value, firm, judged);
        for (int n = firm; n <= Outlooks.MOST; n++) {
            double decides = u.firm(chance, value, n);
            if (decides >= Outlooks.WANTED) {
                return new Outlook(
                        audited,
                        Outlook.Advice.INSERTIONS,
                        n,
                        OptionalDouble.of(decides),
                        needs.wouldPass(),
                        OptionalDouble.empty());
            }
        }
        double most = u.firm(chance, value, Outlooks.MOST);
        boolean worth = firm <= Outlooks.MOST && most >= WORTH;
        return new Outlook(
                audited,
                worth ? Outlook.Advice.INSERTIONS : Outlook.Advice.SMALLER,
                worth ? Outlooks.MOST : 0,
                OptionalDouble.of(most),
                needs.wouldPass(),
                OptionalDouble.of(chance.neededU(value)));
    }

    static boolean isOfSize(Judgement judged) {
        return judged.reasons().stream().map(Remark::key).allMatch(OF_SIZE::contains);
    }

    /**
     * By what the judge said of the value, were it to stay.
     *
     * @param firm so many insertions decided; more than {@link Outlooks#MOST}: none did
     * @param judged from that many, or from the most
     */
    private static Chance chance(Chance chance, double value, int firm, Judgement judged) {
        if (judged.probability().isEmpty()) {
            return chance;
        }
        double probability = judged.probability().getAsDouble();
        return firm > Outlooks.MOST ? chance.unseen(value, probability) : chance.seen(value, probability);
    }

    /** As the insertions are declared or, where they are not or scatter by more, as they scatter. */
    private Uncertain u(Claim claim) throws InputException {
        Judgement few = trial.with(claim, FEW);
        Judgement many = trial.with(claim, Outlooks.MOST);
        return Uncertain.seen(FEW, few, Outlooks.MOST, many)
                .orElse(Uncertain.of(
                        FEW,
                        few.standardUncertainty().orElseThrow(),
                        Outlooks.MOST,
                        many.standardUncertainty().orElseThrow()));
    }

    /**
     * How many insertions would decide, were the value to stay: with whatever else the rule asks of its points. More of them
     * make no verdict less firm, so the fewest are looked for by halves; beyond {@link Outlooks#MOST} where none decide.
     */
    private int firm(Claim claim) throws InputException {
        int undecided = 0;
        int decided = Outlooks.MOST + 2;
        while (decided - undecided > 2) {
            int middle = decided > Outlooks.MOST ? Outlooks.MOST : (undecided + decided) / 4 * 2;
            if (trial.with(claim, middle).verdict() == Verdict.MARGINAL) {
                undecided = middle;
            } else {
                decided = middle;
            }
        }
        return decided;
    }
}
