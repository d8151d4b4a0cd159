package org.ellwand.measurement;

import java.math.BigDecimal;
import java.math.MathContext;
import org.ellwand.acoustics.Band;

/** Frequencies as messages name them: {@code 31.5 Hz}, {@code 3.15 kHz}. */
final class FrequencyText {
    private static final MathContext SIX_DIGITS = new MathContext(6);

    private FrequencyText() {}

    static String of(Band band) {
        return of(band.nominalHz());
    }

    static String of(double hz) {
        boolean kilo = Math.abs(hz) >= 1000;
        BigDecimal number = new BigDecimal(kilo ? hz / 1000 : hz).round(SIX_DIGITS);
        // Zero keeps its trailing zeros in some versions of the class library.
        String text = number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
        return text + (kilo ? " kHz" : " Hz");
    }
}
