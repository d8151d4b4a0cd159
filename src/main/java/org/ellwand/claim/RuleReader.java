package org.ellwand.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Interval;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Unit;
import org.ellwand.input.Nearest;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;

/** Makes a rule of its source, or says what is wrong with every key of it. */
final class RuleReader {
    private static final List<RuleKey> NAMED_CONDITIONS = List.of(
            RuleKey.SETTING,
            RuleKey.FIT,
            RuleKey.FIRMWARE,
            RuleKey.EAR,
            RuleKey.SIDE,
            RuleKey.HEAD,
            RuleKey.UNIT,
            RuleKey.SESSION);
    private static final Set<RuleKey> MAY_BE_ALL = Set.of(RuleKey.SETTING, RuleKey.FIT, RuleKey.FIRMWARE);
    private static final List<RuleKey> KEPT =
            List.of(RuleKey.METHOD, RuleKey.PERFORMANCE, RuleKey.DROP, RuleKey.WITHIN, RuleKey.HARMONICS);

    private final List<QuantityForm> forms;
    private final Set<String> declaredConditions;
    private final TargetReader targets;
    private final Problems problems;

    RuleReader(List<QuantityForm> forms, Set<String> declaredConditions, TargetReader targets, Problems problems) {
        this.forms = List.copyOf(forms);
        this.declaredConditions = declaredConditions;
        this.targets = targets;
        this.problems = problems;
    }

    /** The keys that rules may use. */
    List<String> accepted() {
        List<String> accepted = new ArrayList<>(RuleKey.texts());
        accepted.addAll(declaredConditions);
        return accepted;
    }

    /**
     * Reads one rule.
     *
     * @param edition whose conditions restrict the readings
     * @param fill keys of the whole file, used where this rule does not say them itself
     */
    Optional<Rule> read(RuleSource written, Edition edition, Map<String, YamlNode> fill, Map<String, String> table) {
        Optional<QuantityForm> form = form(written);
        if (form.isEmpty()) {
            return Optional.empty();
        }
        RuleSource source = leaveOut(written, form.get());
        source = filled(source, form.get(), fill);
        boolean usable = refuseUnusable(source, form.get());
        boolean complete = refuseMissing(source, form.get());
        boolean sound = usable && complete;
        return sound ? new Work(source, form.get(), edition, table).rule() : Optional.empty();
    }

    private Optional<QuantityForm> form(RuleSource source) {
        Optional<String> name = source.text(RuleKey.QUANTITY);
        if (name.isEmpty()) {
            problems.add(source.place(), "'quantity' is missing: a rule is about one; accepted are " + quantities());
            return Optional.empty();
        }
        Optional<QuantityForm> form =
                forms.stream().filter(f -> f.name().equals(name.get())).findFirst();
        if (form.isEmpty()) {
            List<String> names = forms.stream().map(QuantityForm::name).toList();
            problems.add(
                    source.placeOf(RuleKey.QUANTITY),
                    "'" + name.get() + "' is no quantity" + Nearest.hint(name.get(), names) + "; accepted are "
                            + quantities());
        }
        return form;
    }

    private String quantities() {
        return String.join(", ", forms.stream().map(QuantityForm::name).toList());
    }

    /** Inherited keys that have nothing to say under what another interpretation overrides. */
    private RuleSource leaveOut(RuleSource source, QuantityForm form) {
        Set<String> out = new TreeSet<>();
        for (String key : source.values().keySet()) {
            if (!source.own().contains(key) && useless(source, form, key).isPresent()) {
                out.add(key);
            }
        }
        return source.without(out);
    }

    /** Why a key has nothing to say in this rule; nothing where it has. */
    private Optional<String> useless(RuleSource source, QuantityForm form, String key) {
        Set<String> usable = new TreeSet<>(form.usable());
        usable.addAll(form.needed().keySet());
        usable.addAll(declaredConditions);
        usable.addAll(List.of("quantity", "limit"));
        if (!usable.contains(key)) {
            return Optional.of(form.name() + " cannot use '" + key + "'; it can use " + String.join(", ", usable));
        }
        boolean overall = isOverall(source);
        if (key.equals("weighting") && !overall && form.needed().containsKey("statistic")) {
            return Optional.of("'weighting' is for 'statistic: overall'");
        }
        if (Set.of("tolerance", "sense").contains(key)
                && source.text(RuleKey.LIMIT)
                        .filter(l -> !LimitReader.isBare(l))
                        .isPresent()) {
            return Optional.of("'" + key + "' is for a bare number; this limit already says how it is meant");
        }
        if (key.equals("level") && comparesLevel(source)) {
            return Optional.of("'level' is compared by 'between' already");
        }
        return Optional.empty();
    }

    private static boolean isOverall(RuleSource source) {
        return source.text(RuleKey.STATISTIC).filter("overall"::equals).isPresent();
    }

    private static boolean comparesLevel(RuleSource source) {
        return source.node(RuleKey.BETWEEN)
                .filter(n -> n instanceof YamlNode.Mapping m && m.get("level").isPresent())
                .isPresent();
    }

    private RuleSource filled(RuleSource source, QuantityForm form, Map<String, YamlNode> fill) {
        RuleSource filled = source;
        for (Map.Entry<String, YamlNode> entry : fill.entrySet()) {
            String key = entry.getKey();
            if (!filled.values().containsKey(key)
                    && useless(filled, form, key).isEmpty()
                    && !isRedundant(filled, key)) {
                Map<String, YamlNode> values = new LinkedHashMap<>(filled.values());
                values.put(key, entry.getValue());
                Map<String, String> assumed = new LinkedHashMap<>(filled.assumed());
                assumed.put(key, RuleSource.written(entry.getValue()));
                filled = new RuleSource(filled.name(), values, filled.own(), filled.stated(), assumed, filled.place());
            }
        }
        return filled;
    }

    /** A level says nothing of quiet, a condition nothing where it is compared. */
    private static boolean isRedundant(RuleSource source, String key) {
        boolean quiet = source.text(RuleKey.STIMULUS).filter("quiet"::equals).isPresent();
        boolean compared = source.node(RuleKey.BETWEEN)
                .filter(n -> n instanceof YamlNode.Mapping m && m.get(key).isPresent())
                .isPresent();
        return compared || (quiet && key.equals("level"));
    }

    private boolean refuseUnusable(RuleSource source, QuantityForm form) {
        boolean sound = true;
        for (Map.Entry<String, YamlNode> entry : source.values().entrySet()) {
            Optional<String> why = useless(source, form, entry.getKey());
            if (why.isPresent()) {
                problems.add(entry.getValue().place(), why.get());
                sound = false;
            }
        }
        return sound;
    }

    private boolean refuseMissing(RuleSource source, QuantityForm form) {
        Map<String, String> needed = new LinkedHashMap<>(form.needed());
        needed.put("limit", "a claim is held against a limit");
        if (isOverall(source)) {
            needed.put("weighting", "levels are summed under one");
        }
        boolean quiet = source.text(RuleKey.STIMULUS).filter("quiet"::equals).isPresent();
        if (quiet || comparesLevel(source)) {
            needed.remove("level");
        }
        boolean sound = true;
        for (Map.Entry<String, String> need : needed.entrySet()) {
            if (!source.values().containsKey(need.getKey())) {
                problems.add(
                        source.place(),
                        "'" + need.getKey() + "' is missing: " + form.name() + " needs it, because " + need.getValue()
                                + " (say it under 'stated' or 'assumed')");
                sound = false;
            }
        }
        return sound;
    }

    /** One value read, or a problem at its place. */
    private interface Reads<T> {
        T read(String text) throws PhraseException;
    }

    private final class Work {
        private final RuleSource source;
        private final QuantityForm form;
        private final Edition edition;
        private final Map<String, String> table;
        private boolean sound = true;

        Work(RuleSource source, QuantityForm form, Edition edition, Map<String, String> table) {
            this.source = source;
            this.form = form;
            this.edition = edition;
            this.table = table;
        }

        Optional<Rule> rule() {
            Optional<Statistic> statistic = value(RuleKey.STATISTIC, RuleValues::statistic);
            Optional<Weighting> weighting = value(RuleKey.WEIGHTING, RuleValues::weighting);
            Optional<Between> between = between();
            Optional<Interval> limit =
                    value(RuleKey.LIMIT, text -> new LimitReader(source, form, statistic, weighting).read());
            Rule rule = new Rule(
                    source.name(),
                    form.name(),
                    limit.orElse(Interval.of(0, 0, Unit.NONE)),
                    statistic,
                    value(RuleKey.BANDS, RuleValues::bands),
                    value(RuleKey.RESOLUTION, RuleValues::resolution).flatMap(r -> r),
                    weighting,
                    where(between),
                    value(RuleKey.STIMULUS, text -> text),
                    value(RuleKey.LEVEL, text -> RuleValues.level(text, source.text(RuleKey.LEVEL_WEIGHTING))),
                    value(RuleKey.REFERRED_TO, RuleValues::field).orElse(false),
                    between,
                    value(RuleKey.COMPARED_BY, RuleValues::ratio).orElse(false),
                    value(RuleKey.EARS, RuleValues::population),
                    value(RuleKey.UNITS, RuleValues::population),
                    value(RuleKey.OF, text -> text),
                    value(RuleKey.REFERENCE, RuleValues::reference),
                    value(RuleKey.TARGET, targets::read),
                    kept(),
                    source.stated(),
                    source.assumed(),
                    table,
                    source.place());
            return sound ? Optional.of(rule) : Optional.empty();
        }

        private <T> Optional<T> value(RuleKey key, Reads<T> reads) {
            Optional<YamlNode> node = source.node(key);
            if (node.isEmpty()) {
                return Optional.empty();
            }
            if (!(node.get() instanceof YamlNode.Scalar scalar) || scalar.text().isBlank()) {
                problem(
                        node.get().place(),
                        key.text(),
                        "a text is expected, not " + node.get().kind());
                return Optional.empty();
            }
            try {
                return Optional.of(reads.read(scalar.text()));
            } catch (PhraseException e) {
                problem(scalar.place(), key.text(), String.valueOf(e.getMessage()));
                return Optional.empty();
            }
        }

        private void problem(Place place, String key, String text) {
            problems.add(place, "'" + key + "': " + text);
            sound = false;
        }

        private Optional<Between> between() {
            return source.node(RuleKey.BETWEEN).flatMap(node -> {
                try {
                    Between between = RuleValues.between(node);
                    return isCondition(between.condition(), node) ? Optional.of(between) : Optional.empty();
                } catch (PhraseException e) {
                    problem(node.place(), "between", String.valueOf(e.getMessage()));
                    return Optional.empty();
                }
            });
        }

        private boolean isCondition(String condition, YamlNode node) {
            List<String> accepted = new ArrayList<>(List.of("device", "level", "stimulus"));
            NAMED_CONDITIONS.forEach(k -> accepted.add(k.text()));
            accepted.addAll(declaredConditions);
            if (!accepted.contains(condition)) {
                problem(
                        node.place(),
                        "between",
                        "'" + condition + "' is no condition" + Nearest.hint(condition, accepted) + "; accepted are "
                                + String.join(", ", accepted));
            }
            return accepted.contains(condition);
        }

        private Map<String, Choice> where(Optional<Between> between) {
            Map<String, Choice> where = new LinkedHashMap<>();
            for (RuleKey key : NAMED_CONDITIONS) {
                source.node(key).ifPresent(node -> choice(where, key.text(), node, MAY_BE_ALL.contains(key)));
            }
            for (String name : new TreeSet<>(declaredConditions)) {
                Optional.ofNullable(source.values().get(name)).ifPresent(node -> choice(where, name, node, true));
            }
            edition.conditions().forEach((name, value) -> {
                boolean compared =
                        between.filter(b -> b.condition().equals(name)).isPresent();
                if (!compared) {
                    where.putIfAbsent(name, new Choice.OneOf(List.of(value)));
                }
            });
            return where;
        }

        private void choice(Map<String, Choice> where, String name, YamlNode node, boolean mayBeAll) {
            try {
                where.put(name, RuleValues.choice(node, mayBeAll));
            } catch (PhraseException e) {
                problem(node.place(), name, String.valueOf(e.getMessage()));
            }
        }

        private Map<String, String> kept() {
            Map<String, String> kept = new LinkedHashMap<>();
            for (RuleKey key : KEPT) {
                value(key, text -> RuleValues.kept(key, text)).ifPresent(text -> kept.put(key.text(), text));
            }
            return kept;
        }
    }
}
