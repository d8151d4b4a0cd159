package org.ellwand.audit;

import java.util.Locale;

/** What an audit says of a claim. */
public enum Verdict {
    PASS,
    MARGINAL,
    FAIL,
    UNTESTED;

    /** The word that is printed and recorded. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
