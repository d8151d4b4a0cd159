package org.ellwand.input;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaSignTest {
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+6 dB", "-6", "@name", " =spaced", "\ttab"})
    void aFormulaIsGuardedAndReadAsItWas(String text) {
        assertThat(FormulaSign.guarded(text)).isEqualTo("'" + text);
        assertThat(FormulaSign.plain(FormulaSign.guarded(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "flood", "'", "'flood'", "10", "a=b", "'t Hoog"})
    void otherTextsStayAsTheyAre(String text) {
        assertThat(FormulaSign.guarded(text)).isEqualTo(text);
        assertThat(FormulaSign.plain(text)).isEqualTo(text);
    }
}
