package org.ellwand.cli;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.ellwand.audit.Audit;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Verdict;
import org.ellwand.claim.Waiver;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** From which verdict on a claim makes the command end with {@link ExitCode#CONDITION_MET}; each includes those before. */
enum FailOn {
    FAIL,
    MARGINAL,
    UNTESTED;

    /** @param today decides whether a waiver still holds */
    boolean isMetBy(Audit audit, LocalDate today) {
        return audit.products().stream()
                .flatMap(product -> product.claims().stream())
                .anyMatch(claim -> isMetBy(claim, today));
    }

    /** A waiver lets a claim pass while it holds; one that has expired makes any claim that is not true fail. */
    private boolean isMetBy(ClaimAudit audited, LocalDate today) {
        Optional<Waiver> waiver = audited.claim().waiver();
        if (waiver.isEmpty()) {
            return isMetBy(audited.verdict());
        }
        return waiver.get().isExpiredOn(today) && audited.verdict() != Verdict.PASS;
    }

    boolean isMetBy(Verdict verdict) {
        return switch (verdict) {
            case PASS -> false;
            case FAIL -> true;
            case MARGINAL -> compareTo(MARGINAL) >= 0;
            case UNTESTED -> this == UNTESTED;
        };
    }

    /** Reads the word of the command line. */
    static final class Converter implements ITypeConverter<FailOn> {
        @Override
        public FailOn convert(String word) {
            return Arrays.stream(values())
                    .filter(value -> value.toString().equals(word))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException("fail, marginal or untested, not '" + word + "'"));
        }
    }

    /** As it is written on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
