package org.ellwand.claim;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What came of a question to the maker about a sentence. A later edition answers it that speaks of the same topic and is dated
 * on the day of the question or after it; of a date without its day (or month) the first day counts, so that nothing older is
 * taken for an answer.
 *
 * @param reply the maker's words about this sentence
 * @param edition what the newest such edition says
 */
public record Answer(Optional<Reply> reply, Optional<Claim> edition) {
    /** {@return whether nothing came, or nothing was asked} */
    public boolean isNone() {
        return reply.isEmpty() && edition.isEmpty();
    }

    /**
     * {@return what is on record of a claim of a product}
     *
     * @param claim the sentence that was asked about
     * @param product the product whose claims file holds it
     */
    public static Answer to(Claim claim, Product product) {
        return new Answer(claim.reply(), claim.asked().flatMap(asked -> newest(claim, product, Dates.firstDay(asked))));
    }

    /**
     * {@return the editions of a product that came after the maker was asked about it in general, oldest first}
     *
     * @param product with its editions and the date of the question
     */
    public static List<Edition> since(Product product) {
        return product.asked()
                .map(asked -> product.editions().stream()
                        .filter(edition -> isSince(edition, Dates.firstDay(asked)))
                        .toList())
                .orElse(List.of());
    }

    private static Optional<Claim> newest(Claim claim, Product product, LocalDate asked) {
        List<Edition> editions = product.editions();
        return product.claims().stream()
                .filter(other -> other.topic().equals(claim.topic())
                        && editions.indexOf(other.edition()) > editions.indexOf(claim.edition())
                        && isSince(other.edition(), asked))
                .reduce((a, b) -> editions.indexOf(b.edition()) >= editions.indexOf(a.edition()) ? b : a);
    }

    private static boolean isSince(Edition edition, LocalDate asked) {
        return !Dates.firstDay(edition.dated()).isBefore(asked);
    }
}
