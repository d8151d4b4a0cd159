package org.ellwand.audit;

/**
 * How an audit is evaluated.
 *
 * @param trials Monte Carlo trials where a closed form does not serve; at least 1000
 */
public record AuditOptions(int trials) {
    /** Trials where the user names none. */
    public static final int DEFAULT_TRIALS = 100_000;

    /** Fewer would say nothing of a tail. */
    public static final int FEWEST_TRIALS = 1000;

    /**
     * Refuses fewer trials than {@link #FEWEST_TRIALS}.
     *
     * @param trials at least {@link #FEWEST_TRIALS}
     */
    public AuditOptions {
        if (trials < FEWEST_TRIALS) {
            throw new IllegalArgumentException("at least " + FEWEST_TRIALS + " trials, not " + trials);
        }
    }

    /** {@return what serves where the user asks for nothing else} */
    public static AuditOptions standard() {
        return new AuditOptions(DEFAULT_TRIALS);
    }
}
