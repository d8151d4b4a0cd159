package org.ellwand.claim;

import java.util.List;
import java.util.Optional;

/**
 * One claims file: a product and what its maker says of it.
 *
 * @param file path relative to the audited folder
 * @param confidence of the decision, 0.95 by default
 * @param editions oldest first
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
    /** This product with other claims. */
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
