package org.ellwand.plan;

import java.util.List;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;

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

    private static Claim plain(Claim c) {
        return new Claim(
                c.id(),
                c.edition(),
                c.topic(),
                c.quote(),
                c.paraphrase(),
                c.rule(),
                c.untestedBecause(),
                c.because(),
                List.of(),
                c.impression(),
                c.asked(),
                c.reply(),
                c.place());
    }
}
