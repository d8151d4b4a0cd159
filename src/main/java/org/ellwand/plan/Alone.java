package org.ellwand.plan;

import java.util.List;
import java.util.Optional;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.claim.Rule;

/** A product with one claim, read in the plain way only. */
final class Alone {
    private Alone() {}

    static Product of(Product p, Claim claim) {
        return new Product(
                p.file(),
                p.name(),
                p.maker(),
                p.about(),
                p.confidence(),
                p.samples(),
                p.disclosure(),
                p.recommendation(),
                p.asked(),
                p.reply(),
                p.editions(),
                List.of(plain(claim)));
    }

    /** The claim about each ear and unit that was measured. */
    static Claim ofEach(Claim c) {
        return with(c, c.rule().map(Rule::ofEach));
    }

    private static Claim plain(Claim c) {
        return with(c, c.rule());
    }

    private static Claim with(Claim c, Optional<Rule> rule) {
        return new Claim(
                c.id(),
                c.edition(),
                c.topic(),
                c.quote(),
                c.paraphrase(),
                rule,
                c.untestedBecause(),
                c.because(),
                List.of(),
                c.impression(),
                c.asked(),
                c.reply(),
                c.place());
    }
}
