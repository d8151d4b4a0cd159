package org.ellwand.claim;

/**
 * A comparison of two values of one condition: the first against the second.
 *
 * @param condition {@code setting}, {@code fit}, {@code level}, … or a condition that a session declares
 * @param first the value that stands first
 * @param second the value it is compared with
 */
public record Between(String condition, String first, String second) {
    /** {@return whether two sounds are compared, by their kind or by their level} */
    public boolean isOfSounds() {
        return condition.equals("level") || condition.equals("stimulus");
    }
}
