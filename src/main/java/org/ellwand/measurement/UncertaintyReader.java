package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.input.YamlNode;

/** Reads {@code uncertainty}: a list of causes, {@code typical probe tube} or {@code unknown}. */
final class UncertaintyReader {
    static final String NEEDED = "list the causes, or write 'typical probe tube' or 'unknown'";
    static final String TYPICAL = "typical probe tube";
    static final List<String> KEYS = List.of("cause", "size", "shared by", "across bands");
    static final Map<String, Boolean> ACROSS_BANDS =
            Collections.unmodifiableMap(new TreeMap<>(Map.of("together", false, "independent", true)));
    static final String UNKNOWN = "unknown";
    private static final String SIZE = "a size in dB (of levels) or in ms (of times)";

    private final Resolution resolution;
    private final Found problems;

    /** @param resolution the bands that every size list must cover once */
    UncertaintyReader(Resolution resolution, Found problems) {
        this.resolution = resolution;
        this.problems = problems;
    }

    Uncertainty read(Keys session) {
        Optional<YamlNode> node = session.mapping().get("uncertainty");
        if (node.isEmpty()) {
            return new Uncertainty.Unknown();
        }
        if (node.get() instanceof YamlNode.Sequence list) {
            return new Uncertainty.Declared(causes(list), false);
        }
        String text = node.get() instanceof YamlNode.Scalar scalar
                ? scalar.text()
                : node.get().kind();
        if (text.equals(TYPICAL)) {
            return new Uncertainty.Declared(TypicalProbeTube.causes(), true);
        }
        if (!text.equals(UNKNOWN)) {
            problems.add(node.get().place(), "'uncertainty: " + text + "' is not accepted; " + NEEDED);
        }
        return new Uncertainty.Unknown();
    }

    private List<Cause> causes(YamlNode.Sequence list) {
        if (list.items().isEmpty()) {
            problems.add(list.place(), "'uncertainty' is an empty list; " + NEEDED);
        }
        List<Cause> causes = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (YamlNode item : list.items()) {
            Keys.of(item, "a cause", problems).flatMap(this::cause).ifPresent(cause -> {
                causes.add(cause);
                if (!names.add(cause.name())) {
                    problems.add(item.place(), "two causes are called '" + cause.name() + "'");
                }
            });
        }
        return causes;
    }

    private Optional<Cause> cause(Keys keys) {
        keys.onlyKnown("a cause", KEYS);
        keys.need("cause", "give it a name");
        keys.need("size", "give " + SIZE);
        keys.need(
                "shared by",
                "say what all readings with one and the same error have in common: "
                        + String.join(", ", sharedBy().keySet()));
        Optional<String> name = keys.text("cause");
        Optional<SharedBy> sharedBy = keys.choice("shared by", sharedBy());
        boolean independent = keys.choice("across bands", ACROSS_BANDS).orElse(false);
        Optional<Sizes> sizes = sizes(keys);
        if (name.isEmpty() || sharedBy.isEmpty() || sizes.isEmpty()) {
            return Optional.empty();
        }
        if (sizes.get().unit == Unit.MILLISECOND && independent) {
            problems.add(keys.placeOf("across bands"), "a cause in ms touches times, which have no bands");
        }
        return Optional.of(new Cause(name.get(), sharedBy.get(), independent, sizes.get().unit, sizes.get().sizes));
    }

    static Map<String, SharedBy> sharedBy() {
        Map<String, SharedBy> words = new LinkedHashMap<>();
        for (SharedBy shared : SharedBy.values()) {
            words.put(shared.name().toLowerCase(Locale.ROOT), shared);
        }
        return words;
    }

    private record Sizes(Unit unit, List<Cause.Size> sizes) {}

    private Optional<Sizes> sizes(Keys keys) {
        Optional<YamlNode> node = keys.mapping().get("size");
        if (node.isPresent() && node.get() instanceof YamlNode.Sequence list) {
            return new SizeList(resolution, problems).read(list).map(sizes -> new Sizes(Unit.DB, sizes));
        }
        return amount(keys, unit -> unit == Unit.DB || unit.dimension() == Dimension.TIME, SIZE)
                .map(UncertaintyReader::everywhere);
    }

    private static Sizes everywhere(Amount size) {
        Unit unit = size.unit() == Unit.DB ? Unit.DB : Unit.MILLISECOND;
        return new Sizes(unit, List.of(new Cause.Size(0, Double.POSITIVE_INFINITY, size.in(unit))));
    }

    /** The size of a mapping, which is not negative. */
    static Optional<Amount> amount(Keys keys, Predicate<Unit> right, String expected) {
        Optional<Amount> size = keys.amount("size", right, expected);
        if (size.isPresent() && size.get().value() < 0) {
            keys.problems().add(keys.placeOf("size"), "a standard uncertainty is not negative");
            return Optional.empty();
        }
        return size;
    }
}
