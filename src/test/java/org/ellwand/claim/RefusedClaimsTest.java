package org.ellwand.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds every case of {@code refused.txt}: a claims file, and after {@code ---} exactly what it is refused with, where
 * {@code {quantities}} stands for the names of all of them.
 */
class RefusedClaimsTest {
    @TempDir
    Path folder;

    record Case(String name, String file, String refusal) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Case> cases() throws Exception {
        List<Case> cases = new ArrayList<>();
        for (String block : ClaimsFolder.resource("refused.txt").split("(?m)^=== ")) {
            if (!block.isBlank()) {
                String[] parts = block.split("(?m)^--- *\n");
                String[] head = parts[0].split("\n", 2);
                cases.add(new Case(head[0], head[1], parts.length > 1 ? parts[1].strip() : ""));
            }
        }
        return cases;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isRefusedWithItsPlaceAndReason(Case refused) throws Exception {
        String quantities = Quantities.forms().stream().map(QuantityForm::name).collect(Collectors.joining(", "));
        assertThat(new ClaimsFolder(folder).refusal(refused.file()))
                .isEqualTo(refused.refusal().replace("{quantities}", quantities));
    }

    @Test
    void thereAreManyCases() throws Exception {
        assertThat(cases()).hasSizeGreaterThan(60);
    }

    @Test
    void tellsAtMostTwenty() throws Exception {
        String claims = IntStream.range(0, 25)
                .mapToObj(i -> "  - {id: c" + i + ", edition: box, quote: q, untested because: no rig, colour: red}\n")
                .collect(Collectors.joining());
        String refusal = new ClaimsFolder(folder).refusal(ClaimsFolder.HEAD + "claims:\n" + claims);
        assertThat(refusal.lines()).hasSize(20);
        assertThat(refusal).endsWith("(and 5 more problems)");
    }
}
