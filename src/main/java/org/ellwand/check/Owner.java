package org.ellwand.check;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.measurement.Conditions;

/**
 * Whose ear a reading was made in.
 *
 * @param ear what the reading says of ear, side and head
 * @param head the head that it is on
 */
record Owner(Conditions ear, String head) {
    private static final Set<String> WHOSE = Set.of("ear", "head", "side");

    /** Where no head is named, the head is the ear's name without its side; empty where that tells nothing. */
    static Optional<Owner> of(Conditions conditions) {
        Conditions ear = Conditions.of(Map.of());
        for (String name : WHOSE) {
            Optional<String> value = conditions.get(name);
            if (value.isPresent()) {
                ear = ear.with(name, value.get());
            }
        }
        String name = ear.get("ear").orElse("");
        String bare = name.toLowerCase(Locale.ROOT).replaceAll("\\b(left|right|l|r)\\b", "");
        boolean told = ear.get("side").isPresent() || bare.length() < name.length();
        Conditions whose = ear;
        return ear.get("head")
                .or(() -> told ? Optional.of(bare) : Optional.empty())
                .map(head -> new Owner(whose, head));
    }

    /** Whether the two are on one head, and not the same. */
    boolean isBeside(Owner other) {
        return head.equals(other.head) && !ear.equals(other.ear);
    }
}
