package org.ellwand.input;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ProblemTest {
    private static String told(String text) {
        return new Problem(new Place("a.yaml", 3, 5), text).text();
    }

    @Test
    void whatWasFoundIsToldWhole() {
        String text = "x".repeat(Problem.LONGEST);
        assertThat(told(text)).isEqualTo(text);
    }

    @Test
    void ofAVeryLongTextWhatItIsAndWhatIsAcceptedAreTold() {
        assertThat(told("'size' is '" + "0 ".repeat(10_000) + "'; accepted is an amount"))
                .startsWith("'size' is '0 0 0")
                .contains(" ... (18035 characters left out) ... 0 0")
                .endsWith("0 '; accepted is an amount")
                .hasSizeLessThan(Problem.LONGEST + 50);
    }
}
