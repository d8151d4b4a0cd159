package org.ellwand.claim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Interval;
import org.ellwand.amount.IntervalPhrase;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.input.Nearest;
import org.ellwand.input.YamlNode;

/** Reads the values of single rule keys; what is wrong with one is said in the exception. */
final class RuleValues {
    private static final double SINGLE_LEVEL_HALF_WIDTH_DB = 1;
    private static final Pattern SHARE = Pattern.compile("share of (.+)");
    private static final Pattern MEAN_OF = Pattern.compile("mean of (.+)");
    private static final List<String> PERFORMANCES = List.of("75 %", "80 %", "84 %", "85 %", "90 %", "95 %");
    private static final List<String> METHODS = List.of("ISO 4869-2:1994", "ISO 4869-2:2018", "40 CFR 211.207");
    private static final Pattern HARMONICS = Pattern.compile("[1-9]\\d?( to [1-9]\\d?)?");

    private RuleValues() {}

    static Statistic statistic(String text) throws PhraseException {
        List<String> accepted =
                Arrays.stream(Statistic.values()).map(Statistic::text).toList();
        return Statistic.named(text).orElseThrow(() -> notOne("statistic", text, accepted));
    }

    static Weighting weighting(String text) throws PhraseException {
        return switch (text) {
            case "A" -> Weighting.A;
            case "C" -> Weighting.C;
            case "Z" -> Weighting.Z;
            default -> throw notOne("weighting", text, List.of("A", "C", "Z"));
        };
    }

    static Optional<Resolution> resolution(String text) throws PhraseException {
        if (text.equals("as measured")) {
            return Optional.empty();
        }
        List<String> accepted = new ArrayList<>(
                Arrays.stream(Resolution.values()).map(Resolution::text).toList());
        accepted.add("as measured");
        return Optional.of(Resolution.named(text).orElseThrow(() -> notOne("resolution", text, accepted)));
    }

    static BandChoice bands(String text) throws PhraseException {
        return text.equals("all") ? new BandChoice.All() : new BandChoice.Range(frequencies(text));
    }

    private static Interval frequencies(String text) throws PhraseException {
        Interval interval = Phrases.interval(text).interval();
        if (interval.unit().dimension() != Dimension.FREQUENCY) {
            throw new PhraseException("'" + text + "' is not in Hz or kHz: bands are '125 Hz to 8 kHz', or 'all'");
        }
        return interval.in(Unit.HZ);
    }

    static LevelChoice level(String text, Optional<String> weighting) throws PhraseException {
        if (text.equals("all")) {
            return new LevelChoice.All();
        }
        IntervalPhrase phrase = Phrases.interval(text);
        Unit unit = levelUnit(text, phrase.interval().unit(), weighting);
        Interval written = phrase.interval();
        double half = phrase.bare().isPresent() ? SINGLE_LEVEL_HALF_WIDTH_DB : 0;
        return new LevelChoice.Range(new Interval(
                written.lower() - half, written.upper() + half, written.lowerOpen(), written.upperOpen(), unit));
    }

    private static Unit levelUnit(String text, Unit written, Optional<String> weighting) throws PhraseException {
        if (written == Unit.DB && weighting.isPresent()) {
            return LimitReader.unitOf(weighting(weighting.get()));
        }
        if (!written.isLevel()) {
            throw new PhraseException(
                    "'" + text
                            + "' is not a level: a level names its weighting (dB SPL, dB(A), dB(C)), or 'level weighting' does");
        }
        return written;
    }

    static Choice choice(YamlNode node, boolean mayBeAll) throws PhraseException {
        List<String> names = names(node);
        if (mayBeAll && names.equals(List.of("all"))) {
            return new Choice.All();
        }
        return new Choice.OneOf(names);
    }

    private static List<String> names(YamlNode node) throws PhraseException {
        List<YamlNode> items = node instanceof YamlNode.Sequence list ? list.items() : List.of(node);
        List<String> names = new ArrayList<>();
        for (YamlNode item : items) {
            if (!(item instanceof YamlNode.Scalar scalar) || scalar.text().isBlank()) {
                throw new PhraseException("a name or a list of names is expected, not " + item.kind());
            }
            names.add(scalar.text());
        }
        if (names.isEmpty()) {
            throw new PhraseException("a name or a list of names is expected, not an empty list");
        }
        return names;
    }

    static Between between(YamlNode node) throws PhraseException {
        if (node instanceof YamlNode.Mapping mapping && mapping.entries().size() == 1) {
            YamlNode.Entry entry = mapping.entries().get(0);
            List<String> values = names(entry.value());
            if (values.size() == 2 && !values.get(0).equals(values.get(1))) {
                return new Between(entry.key(), values.get(0), values.get(1));
            }
        }
        throw new PhraseException(
                "one condition and two different values of it are expected, as {setting: [flood, ebb]}");
    }

    static boolean ratio(String text) throws PhraseException {
        return switch (text) {
            case "difference" -> false;
            case "ratio" -> true;
            default -> throw notOne("compared by", text, List.of("difference", "ratio"));
        };
    }

    static boolean field(String text) throws PhraseException {
        return switch (text) {
            case "eardrum" -> false;
            case "field" -> true;
            default -> throw notOne("referred to", text, List.of("eardrum", "field"));
        };
    }

    static Population population(String text) throws PhraseException {
        Matcher share = SHARE.matcher(text);
        if (share.matches()) {
            Amount amount = Phrases.amount(share.group(1));
            if (amount.unit() == Unit.PERCENT && amount.value() > 0 && amount.value() < 100) {
                return new Population.Share(amount.value());
            }
        }
        return switch (text) {
            case "each" -> new Population.Each();
            case "mean" -> new Population.Mean();
            default -> throw notOne("population", text, List.of("each", "mean", "share of 90 %"));
        };
    }

    static Reference reference(String text) throws PhraseException {
        Matcher mean = MEAN_OF.matcher(text);
        if (mean.matches()) {
            return new Reference.MeanOf(frequencies(mean.group(1)));
        }
        Amount amount = Phrases.amount(text);
        if (amount.unit().dimension() != Dimension.FREQUENCY) {
            throw new PhraseException(
                    "'" + text + "' is not a reference: accepted are 'mean of 200 Hz to 4 kHz', '1 kHz'");
        }
        return new Reference.At(amount.in(Unit.HZ));
    }

    /** Checks the form of a value that is kept as text for the quantity that needs it. */
    static String kept(RuleKey key, String text) throws PhraseException {
        boolean fits = switch (key) {
            case METHOD -> METHODS.contains(text);
            case PERFORMANCE -> PERFORMANCES.contains(text);
            case HARMONICS -> HARMONICS.matcher(text).matches();
            case DROP, WITHIN -> Phrases.amount(text).unit() == Unit.DB;
            default -> true;
        };
        if (!fits) {
            throw new PhraseException("'" + text + "' is not accepted: accepted are " + key.form());
        }
        return text;
    }

    private static PhraseException notOne(String what, String text, List<String> accepted) {
        return new PhraseException("'" + text + "' is no " + what + Nearest.hint(text, accepted) + "; accepted are "
                + String.join(", ", accepted));
    }
}
