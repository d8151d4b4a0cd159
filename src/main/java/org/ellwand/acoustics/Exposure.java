package org.ellwand.acoustics;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Rules that relate a level of noise to the time it may last: a criterion level for 8 h, and an exchange rate, by which the
 * level may rise when the time is halved. All levels are A-weighted, in dB re 20 µPa, as the unprotected listener's
 * position has them: an eardrum reads higher.
 *
 * <p>T = 8 h / 2^((L − criterion) / exchange), D = 100 · t / T. Not in these formulas, and for the reader to know: the
 * table of 29 CFR 1910.95 (G-16a, appendix A) runs from 80 to 130 dB(A) and calls T a reference duration, while its table
 * G-16 ends at 115 dB(A) for a quarter of an hour or less; each rule limits peaks apart (29 CFR 1910.95: 140 dB;
 * 2003/10/EC, article 3: 200, 140 and 112 Pa); and 2003/10/EC counts the attenuation of hearing protectors for its limit,
 * not for its action values.
 */
public enum Exposure {
    /**
     * T(min) = 480 / 2^((L − 85) / 3) and TWA = 10 lg(D / 100) + 85. The exchange rate is 3 dB as printed, not 10 lg 2, so
     * that the two part by 0.034 dB for each tenfold of the dose; each is kept as printed.
     */
    NIOSH("NIOSH 98-126", 85, 3, 10),

    /** Appendix A: T(h) = 8 / 2^((L − 90) / 5) and TWA = 16.61 lg(D / 100) + 90; 16.61 is 5 / lg 2, rounded there. */
    OSHA("29 CFR 1910.95", 90, 5, 16.61),

    /** Article 3: L_EX,8h of 87 dB(A). Equal energy, so the exchange rate is 10 lg 2 = 3.0103 dB, not 3 dB. */
    EU_LIMIT("2003/10/EC limit", 87, 10 * Math.log10(2), 10),

    /** Article 3: L_EX,8h of 85 dB(A), equal energy. */
    EU_UPPER_ACTION("2003/10/EC upper action", 85, 10 * Math.log10(2), 10),

    /** Article 3: L_EX,8h of 80 dB(A), equal energy. */
    EU_LOWER_ACTION("2003/10/EC lower action", 80, 10 * Math.log10(2), 10);

    private static final double DAY_S = 8 * 3600.0;

    private final String text;
    private final double criterionDbA;
    private final double exchangeDb;
    private final double perTenfoldDb;

    Exposure(String text, double criterionDbA, double exchangeDb, double perTenfoldDb) {
        this.text = text;
        this.criterionDbA = criterionDbA;
        this.exchangeDb = exchangeDb;
        this.perTenfoldDb = perTenfoldDb;
    }

    /** {@return the rule's name, as claims write it} */
    public String text() {
        return text;
    }

    /**
     * {@return the rule of this name; empty where there is none}
     *
     * @param text as claims write it
     */
    public static Optional<Exposure> named(String text) {
        return Arrays.stream(values()).filter(e -> e.text.equals(text)).findFirst();
    }

    /** {@return all names, in the order that messages list them} */
    public static List<String> texts() {
        return Arrays.stream(values()).map(Exposure::text).toList();
    }

    /** {@return the level in dB(A) that may last 8 h} */
    public double criterionDbA() {
        return criterionDbA;
    }

    /** {@return the rise in dB that halves the time} */
    public double exchangeDb() {
        return exchangeDb;
    }

    /**
     * {@return the time in s after which a steady level in dB(A) has given a dose of 100 %}
     *
     * @param levelDbA in dB(A) re 20 µPa
     */
    public double permissibleSeconds(double levelDbA) {
        return DAY_S / Math.pow(2, (levelDbA - criterionDbA) / exchangeDb);
    }

    /**
     * {@return the dose in % that a steady level in dB(A) gives in a time in s; doses of several levels add up}
     *
     * @param levelDbA in dB(A) re 20 µPa
     * @param seconds how long it lasts, in s
     * @throws IllegalArgumentException where the time is negative
     */
    public double dosePercent(double levelDbA, double seconds) {
        if (!(seconds >= 0)) {
            throw new IllegalArgumentException("a time of exposure is 0 s or more, not " + seconds);
        }
        return 100 * seconds / permissibleSeconds(levelDbA);
    }

    /**
     * {@return the steady level in dB(A) that gives a dose in % within 8 h (TWA)} No dose is −∞.
     *
     * @param dosePercent in %
     * @throws IllegalArgumentException where the dose is negative
     */
    public double levelOfDoseDbA(double dosePercent) {
        if (!(dosePercent >= 0)) {
            throw new IllegalArgumentException("a dose is 0 % or more, not " + dosePercent);
        }
        return criterionDbA + perTenfoldDb * Math.log10(dosePercent / 100);
    }

    /**
     * Daily noise exposure level L_EX,8h in dB(A): L_Aeq,T + 10 lg(T / 8 h), by energy whatever the rule (2003/10/EC,
     * article 2, refers to ISO 1999; from memory).
     *
     * @param levelDbA equivalent level over the time, in dB(A) re 20 µPa
     * @param seconds the time T, in s
     * @return in dB(A); −∞ for no time
     * @throws IllegalArgumentException where the time is negative
     */
    public static double dailyLevelDbA(double levelDbA, double seconds) {
        if (!(seconds >= 0)) {
            throw new IllegalArgumentException("a time of exposure is 0 s or more, not " + seconds);
        }
        return levelDbA + 10 * Math.log10(seconds / DAY_S);
    }
}
