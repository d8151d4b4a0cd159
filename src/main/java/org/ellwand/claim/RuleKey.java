package org.ellwand.claim;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The keys of a rule: one list for the reader, its messages, the JSON Schema and the documentation. */
public enum RuleKey {
    QUANTITY("quantity", "what is judged", "one of the quantities"),
    LIMIT("limit", "where the value must lie", "an interval phrase: 18 dB ± 3 dB, 15 to 21 dB, at least 15 dB, 18 dB"),
    SENSE("sense", "how a bare number is meant", "at least, at most"),
    TOLERANCE(
            "tolerance",
            "how far from a bare number the value may lie",
            "3 dB, +3 dB / -2 dB, 10 % (of the number), rounding (half the last printed digit)"),
    LIMIT_WEIGHTING("limit weighting", "the weighting that a limit printed as bare dB means", "Z (dB SPL), A, C"),
    BANDS("bands", "over which nominal band centres, ends included", "an interval in Hz or kHz, or all"),
    RESOLUTION("resolution", "how wide the bands are", "third-octave, octave, as measured"),
    STATISTIC(
            "statistic",
            "what is made of the bands",
            "every band, mean, median, lowest, highest, spread, slope, overall"),
    WEIGHTING("weighting", "frequency weighting of an overall level", "A, C, Z"),
    SETTING("setting", "what the product's switch is set to", "a name, a list of names, or all"),
    FIT("fit", "the tip or seal", "a name, a list of names, or all"),
    FIRMWARE("firmware", "the product's firmware", "a name, a list of names, or all"),
    EAR("ear", "which ears", "a name or a list of names"),
    SIDE("side", "left or right", "a name or a list of names"),
    HEAD("head", "which people", "a name or a list of names"),
    UNIT("unit", "which samples of the product", "a name or a list of names"),
    SESSION("session", "which sittings", "a name or a list of names"),
    STIMULUS("stimulus", "kind of the test sound", "a kind, e.g. pink noise, music, quiet"),
    LEVEL(
            "level",
            "levels of the test sound; a single value means ± 1 dB",
            "an interval in dB SPL, dB(A) or dB(C), or all"),
    LEVEL_WEIGHTING("level weighting", "the weighting that a level printed as bare dB means", "Z (dB SPL), A, C"),
    REFERRED_TO("referred to", "where an output level holds: as measured, or less the open-ear gain", "eardrum, field"),
    BETWEEN("between", "compares two values of one condition: the first against the second", "{setting: [flood, ebb]}"),
    COMPARED_BY("compared by", "how between compares", "difference, ratio"),
    EARS("ears", "how several ears count", "each, mean, share of 90 %"),
    UNITS("units", "how several samples count", "each, mean, share of 90 %"),
    OF("of", "which figure or rating", "name of a figure; of a rating: SNR, H, M, L, NRR"),
    METHOD("method", "rule of calculation of a rating", "ISO 4869-2:1994, ISO 4869-2:2018, 40 CFR 211.207"),
    PERFORMANCE("performance", "protection performance of a rating (ISO only)", "75 %, 80 %, 84 %, 85 %, 90 %, 95 %"),
    DROP(
            "drop",
            "how far the gain has fallen at an onset, or the level at the end of a range",
            "an amount in dB, e.g. 2 dB"),
    WITHIN("within", "how near to the steady level, or to the mean gain", "an amount in dB, e.g. 3 dB"),
    HARMONICS("harmonics", "which harmonics are summed", "a range of whole numbers, e.g. 2 to 5"),
    CRITERION("criterion", "the level at the ear that is looked for", "a level in dB(A), e.g. 85 dB(A)"),
    EXPOSURE(
            "exposure",
            "whose rule relates level and duration",
            "NIOSH 98-126, 29 CFR 1910.95, 2003/10/EC limit, 2003/10/EC upper action, 2003/10/EC lower action"),
    DURATION("duration", "how long the sound lasts", "a time, e.g. 8 h"),
    REFERENCE("reference", "what a response is relative to", "mean of 200 Hz to 4 kHz, or 1 kHz"),
    TARGET("target", "what a response is compared with", "a curve sheet in claims/, or open ear");

    private final String text;
    private final String description;
    private final String accepted;

    RuleKey(String text, String description, String accepted) {
        this.text = text;
        this.description = description;
        this.accepted = accepted;
    }

    /** As written in a claims file. */
    public String text() {
        return text;
    }

    public String description() {
        return description;
    }

    /** What the key takes, as messages say it. */
    public String accepted() {
        return accepted;
    }

    /** Whether it names a condition of readings. */
    public boolean isCondition() {
        return compareTo(SETTING) >= 0 && compareTo(SESSION) <= 0;
    }

    /** Whether {@code all} may be said: where readings of several values are refused unless the rule speaks of them. */
    public boolean takesAll() {
        return this == SETTING || this == FIT || this == FIRMWARE;
    }

    public static Optional<RuleKey> named(String text) {
        return Arrays.stream(values()).filter(key -> key.text.equals(text)).findFirst();
    }

    public static List<RuleKey> conditions() {
        return Arrays.stream(values()).filter(RuleKey::isCondition).toList();
    }
}
