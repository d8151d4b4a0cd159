package org.ellwand.amount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhrasesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "18 dB ± 3 dB|15|21|DB",
                "18 ± 3 dB|15|21|DB",
                "18 dB +/- 3 dB|15|21|DB",
                "18 dB +- 3 dB|15|21|DB",
                "0 dB ± 3 dB|-3|3|DB",
                "18 ± 0 dB|18|18|DB",
                "94 dB SPL ± 1|93|95|DB_SPL",
                "50 dB ± 10 %|45|55|DB",
                "50 % ± 10 %|40|60|PERCENT",
                "12 dB/octave ± 2 dB|10|14|DB_PER_OCTAVE",
                "15 to 15 dB|15|15|DB",
                "15 to 21 dB|15|21|DB",
                "15 dB to 21 dB|15|21|DB",
                "−3 to -1.5 dB|-3|-1.5|DB",
                "at least 15 dB|15|Infinity|DB",
                "at most 3 %|-Infinity|3|PERCENT",
                "125 Hz to 8 kHz|0.125|8|KHZ",
                "94 dB SPL ± 1 dB|93|95|DB_SPL",
                "2 to 5|2|5|NONE",
                "85 dBA|85|85|DB_A"
            })
    void readsIntervals(String text, double lower, double upper, Unit unit) throws PhraseException {
        assertThat(Phrases.interval(text).interval()).isEqualTo(Interval.of(lower, upper, unit));
    }

    @Test
    void belowAndAboveLeaveTheirEndOut() throws PhraseException {
        assertThat(Phrases.interval("below 90 dB SPL").interval())
                .isEqualTo(new Interval(Double.NEGATIVE_INFINITY, 90, false, true, Unit.DB_SPL));
        assertThat(Phrases.interval("above 90 dB SPL").interval())
                .isEqualTo(new Interval(90, Double.POSITIVE_INFINITY, true, false, Unit.DB_SPL));
    }

    @Test
    void aBareNumberIsKeptWithItsDecimals() throws PhraseException {
        assertThat(Phrases.interval("18.50 dB").bare()).contains(new Amount(18.5, Unit.DB, 2));
        assertThat(Phrases.interval("15 to 21 dB").bare()).isEmpty();
        assertThat(Phrases.amount("1.5 kHz").in(Unit.HZ)).isEqualTo(1500);
        assertThat(Phrases.amount("3").unit()).isEqualTo(Unit.NONE);
        assertThat(Phrases.amount(".5 dB")).isEqualTo(new Amount(0.5, Unit.DB, 1));
        assertThat(Phrases.amount("123456789 Hz").value()).isEqualTo(123_456_789);
    }

    @Test
    void aBareDecibelIsNoLevel() throws PhraseException {
        assertThat(Phrases.amount("90 dB").unit())
                .isNotEqualTo(Phrases.amount("90 dB SPL").unit());
    }

    @Test
    void readsTolerances() throws PhraseException {
        assertThat(Phrases.tolerance("3 dB")).isEqualTo(new Tolerance.Absolute(3, 3, Unit.DB));
        assertThat(Phrases.tolerance("+3 dB / -2 dB")).isEqualTo(new Tolerance.Absolute(2, 3, Unit.DB));
        assertThat(Phrases.tolerance("+3 / −2 dB")).isEqualTo(new Tolerance.Absolute(2, 3, Unit.DB));
        assertThat(Phrases.tolerance("10 %")).isEqualTo(new Tolerance.Relative(10, 10));
        assertThat(Phrases.tolerance("rounding")).isEqualTo(new Tolerance.Rounding());
    }

    /** A share is one of the nominal value, whether it reaches as far to both sides or not. */
    @Test
    void aShareIsOneOfTheNumberToEitherSide() throws PhraseException {
        Amount share = Phrases.amount("20 %");
        assertThat(Phrases.tolerance("10 %").around(share)).isEqualTo(Interval.of(18, 22, Unit.PERCENT));
        assertThat(Phrases.tolerance("+10 % / -10 %").around(share)).isEqualTo(Interval.of(18, 22, Unit.PERCENT));
        assertThat(Phrases.tolerance("+10 / -5 %").around(Phrases.amount("-40 dB")))
                .isEqualTo(Interval.of(-42, -36, Unit.DB));
    }

    @Test
    void roundingReachesHalfOfTheLastPrintedDigit() throws PhraseException {
        Tolerance rounding = Phrases.tolerance("rounding");
        assertThat(rounding.around(Phrases.amount("18 dB"))).isEqualTo(Interval.of(17.5, 18.5, Unit.DB));
        assertThat(rounding.around(Phrases.amount("18.0 dB"))).isEqualTo(Interval.of(17.95, 18.05, Unit.DB));
    }

    @Test
    void aToleranceMayBeNothing() throws PhraseException {
        assertThat(Phrases.tolerance("0 dB")).isEqualTo(new Tolerance.Absolute(0, 0, Unit.DB));
        assertThat(Phrases.tolerance("+0 dB / -2 dB")).isEqualTo(new Tolerance.Absolute(2, 0, Unit.DB));
        assertThat(Phrases.tolerance("0 %")).isEqualTo(new Tolerance.Relative(0, 0));
    }

    /** What is printed is read back as the same unit, in every spelling. */
    @ParameterizedTest
    @EnumSource(Unit.class)
    void everySpellingOfAUnitIsRead(Unit unit) throws PhraseException {
        for (String spelling : unit.spellings()) {
            assertThat(Phrases.amount("-1.25 " + spelling)).isEqualTo(new Amount(-1.25, unit, 2));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "18,5 dB|'18,5 dB': numbers have a decimal point, not a comma",
                "1234567890 Hz|'1234567890 Hz' has more than 9 digits",
                "21 to 15 dB|'21 to 15 dB' runs downward: the lower end comes first",
                "15 Hz to 21 dB|'15 Hz to 21 dB' mixes units: 'Hz' and 'dB'",
                "18 ± -3 dB|'18 ± -3 dB' is negative: a tolerance is how far from the number a value may lie",
                "up to 18 dB|'up to 18 dB' is not an interval: accepted are '18 dB', '18 dB ± 3 dB', '15 to 21 dB',"
                        + " 'at least 15 dB', 'at most 3 %', 'below 90 dB SPL', 'above 90 dB SPL'",
                "about 18 ± 2 dB|'about 18 ± 2 dB' is not an interval: accepted are '18 dB', '18 dB ± 3 dB',"
                        + " '15 to 21 dB', 'at least 15 dB', 'at most 3 %', 'below 90 dB SPL', 'above 90 dB SPL'",
                "15-21 dB|'15-21 dB': a range is written with 'to', as '15 to 21 dB'",
                "15 dB – 21 dB|'15 dB – 21 dB': a range is written with 'to', as '15 dB to 21 dB'",
                "18 db|'18 db': unknown unit 'db' (did you mean 'dB'?): accepted are Hz, kHz, dB, dB SPL, dB(A), dB(C),"
                        + " dB/octave, %, µs, ms, s, min, h, mm, m, mV, V, mA, mAh, W, g, kg",
                "1e-3 Hz|'1e-3 Hz': unknown unit 'e-3 Hz': accepted are Hz, kHz, dB, dB SPL, dB(A), dB(C), dB/octave,"
                        + " %, µs, ms, s, min, h, mm, m, mV, V, mA, mAh, W, g, kg",
                "1e3 Hz|'1e3 Hz': unknown unit 'e3 Hz': accepted are Hz, kHz, dB, dB SPL, dB(A), dB(C), dB/octave,"
                        + " %, µs, ms, s, min, h, mm, m, mV, V, mA, mAh, W, g, kg"
            })
    void refusesIntervals(String text, String message) {
        assertThatThrownBy(() -> Phrases.interval(text))
                .isInstanceOf(PhraseException.class)
                .hasMessage(message);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "dB", "at least", "± 3 dB", "18 ±", "to 21 dB", "NaN dB", "Infinity dB", "١٨ dB", "18 db"})
    void refusesWhatIsNoPhrase(String text) {
        assertThatThrownBy(() -> Phrases.interval(text)).isInstanceOf(PhraseException.class);
    }

    @Test
    void refusesTolerances() {
        assertThatThrownBy(() -> Phrases.tolerance("about 3 dB"))
                .hasMessage(
                        "'about 3 dB' is not a tolerance: accepted are '3 dB', '+3 dB / -2 dB', '10 %', 'rounding'");
        assertThatThrownBy(() -> Phrases.tolerance("-2 dB / +3 dB"))
                .hasMessage(
                        "'-2 dB / +3 dB' is not a tolerance: accepted are '3 dB', '+3 dB / -2 dB', '10 %', 'rounding'");
        assertThatThrownBy(() -> Phrases.tolerance("+3 % / -2 dB"))
                .hasMessage("'+3 % / -2 dB' mixes units: '%' and 'dB'");
        assertThatThrownBy(() -> Phrases.tolerance("-3 dB"))
                .isInstanceOf(PhraseException.class)
                .hasMessage("'-3 dB' is negative: a tolerance is how far from the number a value may lie");
    }

    /** As it is copied from a page. */
    @Test
    void spacesThatDoNotBreakAreSpaces() throws PhraseException {
        assertThat(Phrases.amount("10\u00A0dB")).isEqualTo(Phrases.amount("10 dB"));
        assertThat(Phrases.interval("at\u00A0least 18\u202FdB")).isEqualTo(Phrases.interval("at least 18 dB"));
    }
}
