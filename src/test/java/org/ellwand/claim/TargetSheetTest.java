package org.ellwand.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TargetSheetTest {
    private static Spectrum read(String text) throws InputException {
        return TargetSheet.read("claims/t.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same curve as instruments and spreadsheets write it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "frequency,level\n125,1.5\n1000,-2\n",
                "frequency (Hz);level (dB)\n125;1,5\n1000;-2\n",
                "Level [DB]\tFREQUENCY [kHz]\r\n1,5\t0,125\r\n-2,0\t1\r\n",
                "\uFEFF\n\"frequency Hz\",\"level dB\"\n125,1.5\n\n1 kHz,\u22122\n"
            })
    void aCurveIsReadHoweverItIsSeparated(String text) throws InputException {
        Spectrum curve = read(text);
        assertThat(curve.resolution()).isEqualTo(Resolution.THIRD_OCTAVE);
        assertThat(curve.bandList()).extracting(band -> band.nominalHz()).containsExactly(125.0, 1000.0);
        assertThat(curve.levelsDb()).containsExactly(1.5, -2);
    }

    @Test
    void itsBandsAreTheWidestThatHoldEveryFrequency() throws InputException {
        assertThat(read("frequency,level\n1030,1\n1090,2\n").resolution()).isEqualTo(Resolution.TWELFTH_OCTAVE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "frequency,level~|: a target needs a header (frequency, level) and a line a band",
                "frequency,dB~125,1|:1: there is no column 'level' in the header: a target has the columns frequency and level",
                "frequency,level,level (dB)~125,1,2|:1: the column 'level' stands twice",
                "frequency (s),level~125,1|:1: the column 'frequency (s)' is not in Hz or kHz",
                "frequency,level (Pa)~125,1|:1: the column 'level (Pa)' is not in dB, dB SPL, dB(A) or dB(C)",
                "frequency,level~125|:2: this line has no level",
                "frequency,level~125,1,5|:2: the row has 3 cells, the header 2; where numbers have decimal commas, semicolons or"
                        + " tabs separate the cells",
                "frequency,level~125,1~,2|:3: this line has no frequency",
                "frequency,level~125,\"1,5\"|:2: column 'level': '1,5': numbers have a decimal point, not a comma",
                "frequency;level~125;1,5~250;1.5|:3: column 'level': '1.5': the sheet has decimal commas and decimal points, of"
                        + " which it keeps to one",
                "frequency,level~125,loud|:2: column 'level': 'loud' is not a number with a unit, as '18 dB'",
                "frequency,level~125,1 s|:2: column 'level': s cannot be turned into dB",
                "frequency,level~0,1|:2: a frequency is above 0 Hz",
                "frequency,level~125,1~125,2|:3: this frequency stands here a second time",
                "frequency,level~1007,1~1200,1|: the frequencies are not band centres of third octaves, octaves, sixth or"
                        + " twelfth octaves"
            })
    void whatIsWrongIsToldWithItsLine(String text, String message) {
        assertThatThrownBy(() -> read(text.replace('~', '\n')))
                .isInstanceOf(InputException.class)
                .hasMessage("claims/t.csv" + message);
    }

    @Test
    void otherTextsAreRefused() {
        byte[] latin = {'f', (byte) 0xE4};
        assertThatThrownBy(() -> TargetSheet.read("claims/t.csv", latin))
                .hasMessage("claims/t.csv: not UTF-8 text: save the file as UTF-8");
    }
}
