package org.ellwand.claim;

import java.util.List;
import java.util.Optional;

/**
 * One claims file: a product and what its maker says of it.
 *
 * @param file path relative to the audited folder
 * @param name as printed, and as sessions name it
 * @param maker name of the maker
 * @param about what it is, in a sentence
 * @param confidence of the decision, 0.95 by default
 * @param samples tested units and whence they came
 * @param disclosure what ties the auditor to the maker, printed as written
 * @param recommendation what the auditor recommends, printed as written
 * @param asked date of a question to the maker about the product as a whole
 * @param reply the maker's answer to it
 * @param editions oldest first
 * @param claims in the order of the file
 */
public record Product(
        String file,
        String name,
        Optional<String> maker,
        Optional<String> about,
        double confidence,
        List<Sample> samples,
        Optional<String> disclosure,
        Optional<String> recommendation,
        Optional<String> asked,
        Optional<Reply> reply,
        List<Edition> editions,
        List<Claim> claims) {
    /**
     * {@return this product with other claims}
     *
     * @param others instead of its own
     */
    public Product withClaims(List<Claim> others) {
        return new Product(
                file,
                name,
                maker,
                about,
                confidence,
                samples,
                disclosure,
                recommendation,
                asked,
                reply,
                editions,
                List.copyOf(others));
    }
}
