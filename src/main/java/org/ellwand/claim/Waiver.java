package org.ellwand.claim;

import java.time.LocalDate;

/**
 * A claim that is known not to hold, and is let pass in a build for a while.
 *
 * @param owner who answers for it
 * @param reason why it is let pass
 * @param until last day on which it is
 */
public record Waiver(String owner, String reason, LocalDate until) {
    /**
     * {@return whether a day lies after the last day of the waiver}
     *
     * @param day the day of the build
     */
    public boolean isExpiredOn(LocalDate day) {
        return day.isAfter(until);
    }

    /** {@return the waiver in words} As {@code waived until 2026-12-31 by A. Engineer: new tips are on their way}. */
    public String words() {
        return "waived until " + until + " by " + owner + ": " + reason;
    }
}
