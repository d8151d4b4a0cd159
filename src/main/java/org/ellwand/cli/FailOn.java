package org.ellwand.cli;

import java.util.Locale;
import org.ellwand.audit.Audit;
import org.ellwand.audit.Verdict;

/** From which verdict on a claim makes the command end with {@link ExitCode#CONDITION_MET}; each includes those before. */
enum FailOn {
    FAIL,
    MARGINAL,
    UNTESTED;

    boolean isMetBy(Audit audit) {
        return audit.products().stream()
                .flatMap(product -> product.claims().stream())
                .anyMatch(claim -> isMetBy(claim.verdict()));
    }

    boolean isMetBy(Verdict verdict) {
        return switch (verdict) {
            case PASS -> false;
            case FAIL -> true;
            case MARGINAL -> compareTo(MARGINAL) >= 0;
            case UNTESTED -> this == UNTESTED;
        };
    }

    /** As it is written on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
