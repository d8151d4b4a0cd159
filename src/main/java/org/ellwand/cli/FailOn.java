package org.ellwand.cli;

import java.util.Arrays;
import java.util.Locale;
import org.ellwand.audit.Audit;
import org.ellwand.audit.Verdict;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

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

    /** Reads the word of the command line. */
    static final class Converter implements ITypeConverter<FailOn> {
        @Override
        public FailOn convert(String word) {
            return Arrays.stream(values())
                    .filter(value -> value.toString().equals(word))
                    .findFirst()
                    .orElseThrow(() ->
                            new TypeConversionException("it takes fail, marginal or untested, not '" + word + "'"));
        }
    }

    /** As it is written on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
