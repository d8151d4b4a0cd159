package org.ellwand.pairing;

import java.util.List;

/**
 * Both sides of a comparison of means, where nobody and nothing was measured on both: other people, or other units.
 *
 * @param first at least one
 * @param second at least one
 */
public record Sides(List<Joined> first, List<Joined> second) {
    /**
     * Keeps copies of the lists.
     *
     * @param first at least one
     * @param second at least one
     */
    public Sides {
        first = List.copyOf(first);
        second = List.copyOf(second);
    }
}
