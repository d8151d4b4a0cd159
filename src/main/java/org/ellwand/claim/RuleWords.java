package org.ellwand.claim;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.amount.Interval;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.input.Fields;
import org.ellwand.input.Nearest;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;

/** Takes the values of one rule's keys out of their texts and notes what is wrong with them. */
final class RuleWords {
    private final Given given;
    private final Problems problems;

    /** Turns a text into a value. */
    interface Reading<T> {
        T of(String text) throws PhraseException;
    }

    RuleWords(Given given, Problems problems) {
        this.given = given;
        this.problems = problems;
    }

    Given given() {
        return given;
    }

    void problem(RuleKey key, String text) {
        problems.add(given.place(key), text);
    }

    Optional<String> text(RuleKey key) {
        Optional<YamlNode> node = given.value(key);
        if (node.isPresent() && !(node.get() instanceof YamlNode.Scalar)) {
            problem(
                    key,
                    "'" + key.text() + "' takes a text, not " + node.get().kind() + ": accepted is " + key.accepted());
            return Optional.empty();
        }
        return node.flatMap(scalar -> Fields.text(key.text(), scalar, problems));
    }

    <T> Optional<T> phrase(RuleKey key, Reading<T> reading) {
        return text(key).flatMap(text -> phrase(key, text, reading));
    }

    <T> Optional<T> phrase(RuleKey key, String text, Reading<T> reading) {
        try {
            return Optional.of(reading.of(text));
        } catch (PhraseException e) {
            problem(key, "'" + key.text() + "': " + e.getMessage());
            return Optional.empty();
        }
    }

    /** One of some words. */
    <T> Optional<T> choice(RuleKey key, Map<String, T> accepted) {
        return text(key).flatMap(text -> {
            Optional<T> value = Optional.ofNullable(accepted.get(text));
            if (value.isEmpty()) {
                problem(key, refusal(key, text, accepted.keySet().stream().toList()));
            }
            return value;
        });
    }

    static String refusal(RuleKey key, String text, List<String> accepted) {
        return "'" + key.text() + "' does not take '" + text + "'" + Nearest.hint(text, accepted) + ": accepted are "
                + String.join(", ", accepted);
    }

    /** Names of a condition. */
    Optional<Choice> names(String key) {
        return given.item(key).flatMap(item -> names(key, item.entry().value()));
    }

    private Optional<Choice> names(String key, YamlNode node) {
        List<String> names = Fields.texts(key, node, problems);
        if (!names.contains("all")) {
            return names.isEmpty() ? Optional.empty() : Optional.of(new Choice.OneOf(names));
        }
        boolean takesAll = RuleKey.named(key).map(RuleKey::takesAll).orElse(true);
        if (!takesAll) {
            problems.add(node.place(), "'" + key + "' does not take 'all': to leave it free, leave the key out");
        } else if (names.size() > 1) {
            problems.add(node.place(), "'" + key + "': 'all' stands alone, not in a list");
        }
        return Optional.of(new Choice.All());
    }

    /** {@code all}, or an interval of frequencies in Hz. */
    Optional<BandChoice> bands() {
        return text(RuleKey.BANDS)
                .flatMap(text -> text.equals("all")
                        ? Optional.of(new BandChoice.All())
                        : phrase(RuleKey.BANDS, text, t -> new BandChoice.Range(Frequencies.interval(t))));
    }

    Optional<Reference> reference() {
        return phrase(RuleKey.REFERENCE, text -> {
            if (text.startsWith("mean of ")) {
                return new Reference.MeanOf(Frequencies.interval(text.substring("mean of ".length())));
            }
            return new Reference.At(Frequencies.single(text));
        });
    }

    Optional<Population> population(RuleKey key) {
        return phrase(key, text -> {
            if (text.equals("each")) {
                return new Population.Each();
            }
            if (text.equals("mean")) {
                return new Population.Mean();
            }
            if (text.startsWith("share of ")) {
                return new Population.Share(Shares.percent(text.substring("share of ".length())));
            }
            throw new PhraseException("'" + text + "' is not accepted: accepted are each, mean, share of 90 %");
        });
    }

    /** The comparison; a level in it is completed by {@code level weighting}. */
    Optional<Between> between() {
        return given.value(RuleKey.BETWEEN)
                .flatMap(node -> Comparisons.read(node, problems))
                .flatMap(this::completed);
    }

    private Optional<Between> completed(Between between) {
        if (!between.condition().equals("level")) {
            return Optional.of(between);
        }
        Optional<String> first = level(between.first());
        Optional<String> second = level(between.second());
        return first.flatMap(f -> second.map(s -> new Between("level", f, s)));
    }

    private Optional<String> level(String text) {
        return phrase(RuleKey.BETWEEN, text, t -> {
            Interval level = Levels.interval(t, given.glance(RuleKey.LEVEL_WEIGHTING));
            return Phrases.interval(t).interval().unit() == level.unit()
                    ? t
                    : t.replaceAll("dB", level.unit().symbol());
        });
    }

    /** A key's value as reports print it: lists as {@code a, b}, a mapping as {@code setting: flood, ebb}. */
    static String written(YamlNode node) {
        List<String> parts = new ArrayList<>();
        if (node instanceof YamlNode.Sequence sequence) {
            sequence.items().forEach(item -> parts.add(written(item)));
        } else if (node instanceof YamlNode.Mapping mapping) {
            mapping.entries().forEach(entry -> parts.add(entry.key() + ": " + written(entry.value())));
        } else if (node instanceof YamlNode.Scalar scalar) {
            parts.add(scalar.text().strip());
        }
        return String.join(", ", parts);
    }

    static Map<String, String> written(List<YamlNode.Entry> entries) {
        Map<String, String> texts = new LinkedHashMap<>();
        entries.forEach(entry -> texts.put(entry.key(), written(entry.value())));
        return Collections.unmodifiableMap(texts);
    }
}
