package org.ellwand.audit;

import java.util.Locale;

/** What an audit says of a claim. */
public enum Verdict {
    /** True with at least the claim's confidence, wherever the rule speaks. */
    PASS,
    /** The readings do not decide. */
    MARGINAL,
    /** Beyond the limit by more than errors of this size would bring about by chance. */
    FAIL,
    /** No reading can say anything of it. */
    UNTESTED;

    /** {@return the word that is printed and recorded} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
