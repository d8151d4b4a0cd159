package org.ellwand.claim;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The keys of a rule: what stands under {@code stated}, {@code assumed} and {@code otherwise}. */
public enum RuleKey {
    QUANTITY("quantity", "a quantity", "what the sentence is about"),
    LIMIT("limit", "18 dB, 18 dB ± 3 dB, 15 to 21 dB, at least 15 dB, at most 3 %", "where the value must lie"),
    SENSE("sense", "at least or at most", "how a bare number is meant"),
    LIMIT_WEIGHTING("limit weighting", "Z, A or C", "completes a bare dB of the limit"),
    LEVEL_WEIGHTING("level weighting", "Z, A or C", "completes a bare dB of the level"),
    TOLERANCE("tolerance", "3 dB, +3 dB / -2 dB, 10 %, rounding", "how far from a bare number the value may lie"),
    BANDS("bands", "125 Hz to 8 kHz, or all", "nominal band centres, ends included"),
    RESOLUTION("resolution", "third-octave, octave, sixth-octave, twelfth-octave, as measured", "width of the bands"),
    STATISTIC(
            "statistic",
            "every band, mean, median, lowest, highest, spread, slope, overall",
            "what is made of the bands"),
    WEIGHTING("weighting", "A, C or Z", "under which levels are summed"),
    SETTING("setting", "a name, a list of names, or all", "what the product's switch is set to"),
    FIT("fit", "a name, a list of names, or all", "the tip or seal used"),
    FIRMWARE("firmware", "a name, a list of names, or all", "the product's firmware"),
    EAR("ear", "a name or a list of names", "the ear"),
    SIDE("side", "left, right, or a list", "the side"),
    HEAD("head", "a name or a list of names", "the person"),
    UNIT("unit", "a name or a list of names", "the sample of the product"),
    SESSION("session", "a name or a list of names", "the sitting"),
    STIMULUS("stimulus", "a kind: pink noise, music, quiet", "the test sound"),
    LEVEL("level", "90 to 100 dB SPL; a single value means ± 1 dB; all", "level of the stimulus"),
    REFERRED_TO("referred to", "eardrum or field", "where an output level is meant"),
    BETWEEN("between", "{setting: [flood, ebb]}", "the first less the second"),
    COMPARED_BY("compared by", "difference or ratio", "how two values are compared"),
    EARS("ears", "each, mean, share of 90 %", "how several ears count"),
    UNITS("units", "each, mean, share of 90 %", "how several units count"),
    OF("of", "a name; SNR, H, M, L or NRR of a rating", "which figure or rating"),
    METHOD("method", "ISO 4869-2:1994, ISO 4869-2:2018 or 40 CFR 211.207", "how a rating is calculated"),
    PERFORMANCE("performance", "75 %, 80 %, 84 %, 85 %, 90 % or 95 %", "protection performance of a rating"),
    DROP("drop", "2 dB", "how far the gain must have fallen"),
    WITHIN("within", "3 dB", "how near to the steady level"),
    HARMONICS("harmonics", "2 to 5", "which harmonics are summed"),
    REFERENCE("reference", "mean of 200 Hz to 4 kHz, or 1 kHz", "what a response is relative to"),
    TARGET("target", "a curve sheet in claims/, or open ear", "what a response is compared with");

    private final String text;
    private final String form;
    private final String meaning;

    RuleKey(String text, String form, String meaning) {
        this.text = text;
        this.form = form;
        this.meaning = meaning;
    }

    /** The key as written. */
    public String text() {
        return text;
    }

    /** What may stand under it. */
    public String form() {
        return form;
    }

    public String meaning() {
        return meaning;
    }

    public static Optional<RuleKey> named(String text) {
        return Arrays.stream(values()).filter(k -> k.text.equals(text)).findFirst();
    }

    public static List<String> texts() {
        return Arrays.stream(values()).map(RuleKey::text).toList();
    }
}
