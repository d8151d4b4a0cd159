package org.ellwand.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.audit.Verdict;
import org.ellwand.claim.Product;
import org.ellwand.words.Remark;

/**
 * How many insertions a claim wants that is open for want of them, and how often these will decide. It asks for one number of insertions
 * after the other and is told what is said of the claim, were the values to stay; of a lot each such answer is the work of an audit.
 */
final class MoreInsertions {
    /** A sitting that decides more often than not is worth its while where none decides as often as is wanted. */
    private static final double WORTH = 0.5;

    /** Reasons that a further sitting alone takes away. */
    private static final Set<String> OF_SIZE =
            Set.of("too-few-insertions", "on-the-limit", "on-the-limit-however-many", "too-wide");

    private final Product product;
    private final ClaimAudit audited;
    private final Needs needs;
    private final FewestInsertions fewest = new FewestInsertions();
    private final Map<Integer, Judgement> heard = new HashMap<>();

    /** @param plain from what was measured, with a value and a standard uncertainty */
    MoreInsertions(Product product, ClaimAudit audited, Judgement plain) {
        this.product = product;
        this.audited = audited;
        this.needs = new Needs(plain, product.confidence());
    }

    /** The product with this claim alone. */
    Product alone() {
        return Alone.of(product, audited.claim());
    }

    /** The number of insertions to be judged next; empty where enough is known. */
    OptionalInt asksFor() {
        return isHeldUp() ? OptionalInt.empty() : fewest.next();
    }

    void hear(int insertions, Judgement judged) {
        heard.put(insertions, judged);
        fewest.hear(insertions, judged.verdict() != Verdict.MARGINAL);
    }

    /** Whether something other than their number, such as a fault of a reading, stands in the way however many there are. */
    private boolean isHeldUp() {
        return Optional.ofNullable(heard.get(Outlooks.MOST))
                .filter(most -> most.verdict() == Verdict.MARGINAL && !isOfSize(most))
                .isPresent();
    }

    private Judgement with(int insertions) {
        return Optional.ofNullable(heard.get(insertions)).orElseThrow();
    }

    /** What stands between the claim and a firm verdict, once all is heard. */
    Outlook outlook() {
        if (isHeldUp()) {
            return Outlooks.complete(audited);
        }
        Judgement plain = needs.plain();
        double value = plain.point().map(Point::value).orElse(plain.value().orElseThrow());
        int firm = fewest.found();
        Judgement ofFirm = with(Math.min(firm, Outlooks.MOST));
        Uncertain u = u();
        Chance chance = chance(needs.chance(), value, firm, ofFirm);
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
    private Uncertain u() {
        Judgement few = with(FewestInsertions.FEW);
        Judgement many = with(Outlooks.MOST);
        return Uncertain.seen(FewestInsertions.FEW, few, Outlooks.MOST, many)
                .orElse(Uncertain.of(
                        FewestInsertions.FEW,
                        few.standardUncertainty().orElseThrow(),
                        Outlooks.MOST,
                        many.standardUncertainty().orElseThrow()));
    }
}
