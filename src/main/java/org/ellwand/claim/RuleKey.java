package org.ellwand.claim;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The keys of a rule: one list for the reader, its messages, the JSON Schema and the documentation. */
public enum RuleKey {
    /** The quantity that the claim is about; every rule has it. */
    QUANTITY("quantity", "what is judged", "one of the quantities"),
    /** The range that the value must lie in; every rule has it. */
    LIMIT("limit", "where the value must lie", "an interval phrase: 18 dB ± 3 dB, 15 to 21 dB, at least 15 dB, 18 dB"),
    /** Makes a one-sided limit of a bare number. */
    SENSE("sense", "how a bare number is meant", "at least, at most"),
    /** Makes a range of a bare number. */
    TOLERANCE(
            "tolerance",
            "how far from a bare number the value may lie",
            "3 dB, +3 dB / -2 dB, 10 % (of the number), rounding (half the last printed digit)"),
    /** The weighting of a limit in bare dB. */
    LIMIT_WEIGHTING("limit weighting", "the weighting that a limit printed as bare dB means", "Z (dB SPL), A, C"),
    /** The frequencies that the claim speaks of. */
    BANDS("bands", "over which nominal band centres, ends included", "an interval in Hz or kHz, or all"),
    /** The width of the bands that it speaks of. */
    RESOLUTION("resolution", "how wide the bands are", "third-octave, octave, as measured"),
    /** How many numbers become one, or none do. */
    STATISTIC(
            "statistic",
            "what is made of the bands",
            "every band, mean, median, lowest, highest, spread, slope, overall"),
    /** The frequency weighting of an overall level. */
    WEIGHTING("weighting", "frequency weighting of an overall level", "A, C, Z"),
    /** Condition: what the product's switch is set to. */
    SETTING("setting", "what the product's switch is set to", "a name, a list of names, or all"),
    /** Condition: the tip or seal. */
    FIT("fit", "the tip or seal", "a name, a list of names, or all"),
    /** Condition: the product's firmware. */
    FIRMWARE("firmware", "the product's firmware", "a name, a list of names, or all"),
    /** Condition: the ears. */
    EAR("ear", "which ears", "a name or a list of names"),
    /** Condition: left or right. */
    SIDE("side", "left or right", "a name or a list of names"),
    /** Condition: the people. */
    HEAD("head", "which people", "a name or a list of names"),
    /** Condition: the samples of the product. */
    UNIT("unit", "which samples of the product", "a name or a list of names"),
    /** Condition: the measurement sessions. */
    SESSION("session", "which sittings", "a name or a list of names"),
    /** The kind of the test sound. */
    STIMULUS("stimulus", "kind of the test sound", "a kind, e.g. pink noise, music, quiet"),
    /** The levels of the test sound, in dB SPL, dB(A) or dB(C). */
    LEVEL(
            "level",
            "levels of the test sound; a single value means ± 1 dB",
            "an interval in dB SPL, dB(A) or dB(C), or all"),
    /** The weighting of levels in bare dB. */
    LEVEL_WEIGHTING("level weighting", "the weighting that a level printed as bare dB means", "Z (dB SPL), A, C"),
    /** Whether an output level holds at the eardrum or in the field. */
    REFERRED_TO("referred to", "where an output level holds: as measured, or less the open-ear gain", "eardrum, field"),
    /** The two values of a condition that are compared. */
    BETWEEN("between", "compares two values of one condition: the first against the second", "{setting: [flood, ebb]}"),
    /** Whether these are subtracted or divided. */
    COMPARED_BY("compared by", "how between compares", "difference, ratio"),
    /** Whether the claim speaks of each ear, of the mean or of a share of people. */
    EARS("ears", "how several ears count", "each, mean, share of 90 %"),
    /** The same of the samples of a product. */
    UNITS("units", "how several samples count", "each, mean, share of 90 %"),
    /** The name of a figure or a rating. */
    OF("of", "which figure or rating", "name of a figure; of a rating: SNR, H, M, L, NRR"),
    /** The rule of calculation of a rating. */
    METHOD("method", "rule of calculation of a rating", "ISO 4869-2:1994, ISO 4869-2:2018, 40 CFR 211.207"),
    /** The protection performance of a rating, in % (ISO 4869-2). */
    PERFORMANCE("performance", "protection performance of a rating (ISO only)", "75 %, 80 %, 84 %, 85 %, 90 %, 95 %"),
    /** The fall in dB by which an onset or the end of a range is told. */
    DROP(
            "drop",
            "how far the gain has fallen at an onset, or the level at the end of a range",
            "an amount in dB, e.g. 2 dB"),
    /** The distance in dB within which a level counts as settled, or a gain as steady. */
    WITHIN("within", "how near to the steady level, or to the mean gain", "an amount in dB, e.g. 3 dB"),
    /** The orders of the harmonics that are summed. */
    HARMONICS("harmonics", "which harmonics are summed", "a range of whole numbers, e.g. 2 to 5"),
    /** The level at the ear that is looked for, in dB(A). */
    CRITERION("criterion", "the level at the ear that is looked for", "a level in dB(A), e.g. 85 dB(A)"),
    /** The rule that relates level and duration. */
    EXPOSURE(
            "exposure",
            "whose rule relates level and duration",
            "NIOSH 98-126, 29 CFR 1910.95, 2003/10/EC limit, 2003/10/EC upper action, 2003/10/EC lower action"),
    /** The duration of the sound. */
    DURATION("duration", "how long the sound lasts", "a time, e.g. 8 h"),
    /** The frequencies that a response is relative to. */
    REFERENCE("reference", "what a response is relative to", "mean of 200 Hz to 4 kHz, or 1 kHz"),
    /** The curve that a response is compared with. */
    TARGET("target", "what a response is compared with", "a curve sheet in claims/, or open ear");

    private final String text;
    private final String description;
    private final String accepted;

    RuleKey(String text, String description, String accepted) {
        this.text = text;
        this.description = description;
        this.accepted = accepted;
    }

    /** {@return the key as written in a claims file} */
    public String text() {
        return text;
    }

    /** {@return what the key says, in a few words for documentation and schema} */
    public String description() {
        return description;
    }

    /** {@return what the key takes, as messages say it} */
    public String accepted() {
        return accepted;
    }

    /** Whether it names a condition of readings. */
    boolean isCondition() {
        return compareTo(SETTING) >= 0 && compareTo(SESSION) <= 0;
    }

    /** Whether {@code all} may be said: where readings of several values are refused unless the rule speaks of them. */
    boolean takesAll() {
        return this == SETTING || this == FIT || this == FIRMWARE;
    }

    /**
     * {@return the key of this spelling; empty where there is none}
     *
     * @param text as written in a claims file
     */
    public static Optional<RuleKey> named(String text) {
        return Arrays.stream(values()).filter(key -> key.text.equals(text)).findFirst();
    }

    /** The names that conditions of readings may have, those that sessions declare behind those of this list. */
    static List<String> conditions(Collection<String> declared) {
        Set<String> names = new LinkedHashSet<>();
        conditions().forEach(key -> names.add(key.text()));
        names.addAll(declared);
        return List.copyOf(names);
    }

    /** {@return the keys that name conditions of readings, in the order of this list} */
    public static List<RuleKey> conditions() {
        return Arrays.stream(values()).filter(RuleKey::isCondition).toList();
    }
}
