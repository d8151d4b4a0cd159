package org.ellwand.claim;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.input.Fields;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;

/** Reads the claims of a claims file. */
final class ClaimReader {
    static final List<String> KEYS = List.of(
            "id",
            "edition",
            "topic",
            "quote",
            "paraphrase",
            "stated",
            "assumed",
            "because",
            "otherwise",
            "table",
            "untested because",
            "impression",
            "asked",
            "reply",
            "waiver");
    private static final List<String> RULE_PARTS = List.of("stated", "assumed", "otherwise", "table");
    private static final Edition NONE = new Edition("", "", "", Optional.empty(), Map.of(), true);

    private final RuleReader rules;
    private final Map<String, Edition> editions;
    private final List<YamlNode.Entry> assumedThroughout;
    private final Problems problems;
    private final ProductFields common;

    ClaimReader(
            RuleReader rules,
            Map<String, Edition> editions,
            List<YamlNode.Entry> assumedThroughout,
            Problems problems) {
        this.rules = rules;
        this.editions = editions;
        this.assumedThroughout = assumedThroughout;
        this.problems = problems;
        this.common = new ProductFields(problems);
    }

    List<Claim> read(List<YamlNode> nodes) {
        List<Fields> all = nodes.stream()
                .flatMap(node -> Fields.of(node, "a claim", KEYS, problems).stream())
                .toList();
        common.refuseTwice("id", all);
        return all.stream().map(this::claim).toList();
    }

    private Claim claim(Fields fields) {
        String id = common.id(fields).orElse("");
        Edition edition = edition(fields);
        String quote = fields.requiredText("quote").orElse("");
        Optional<String> untested = fields.text("untested because");
        Optional<String> paraphrase = paraphrase(fields, edition);
        List<Rule> all = fields.has("untested because") ? noRules(fields) : rules(fields, edition);
        return new Claim(
                id,
                edition,
                fields.text("topic").orElse(id),
                quote,
                paraphrase,
                all.stream().findFirst(),
                untested,
                fields.text("because"),
                all.stream().skip(1).toList(),
                fields.text("impression"),
                common.date(fields, "asked"),
                common.reply(fields),
                common.waiver(fields),
                fields.place());
    }

    private Edition edition(Fields fields) {
        return fields.requiredText("edition")
                .flatMap(id -> {
                    if (!editions.isEmpty() && !editions.containsKey(id)) {
                        problems.add(fields.place("edition"), Fields.unknown("edition", id, editions.keySet()));
                    }
                    return Optional.ofNullable(editions.get(id));
                })
                .orElse(NONE);
    }

    private Optional<String> paraphrase(Fields fields, Edition edition) {
        if (!edition.mayBeQuoted() && !fields.has("paraphrase")) {
            problems.add(
                    fields.place(),
                    "the edition '" + edition.id()
                            + "' may not be quoted: the claim needs 'paraphrase', which is printed" + " instead");
        }
        return fields.text("paraphrase");
    }

    private List<Rule> noRules(Fields fields) {
        RULE_PARTS.stream()
                .filter(fields::has)
                .forEach(key -> problems.add(
                        fields.keyPlace(key), "'" + key + "' beside 'untested because': a claim has one or the other"));
        return List.of();
    }

    /** The plain rule and the others behind it; none where the plain rule is wrong. */
    private List<Rule> rules(Fields fields, Edition edition) {
        List<YamlNode.Entry> stated = part(fields, "stated");
        List<YamlNode.Entry> assumed = part(fields, "assumed");
        if (!fields.has("stated") && !fields.has("assumed")) {
            problems.add(fields.place(), "the claim has neither a rule ('stated', 'assumed') nor 'untested because'");
            return List.of();
        }
        Set<String> names = names(stated);
        refuseBoth(names, assumed);
        Place place = fields.has("stated") ? fields.keyPlace("stated") : fields.keyPlace("assumed");
        Given own = Given.of(place).with(stated, true).with(assumed, true);
        Map<String, String> table =
                fields.value("table").map(new TableReader(problems)::read).orElse(Map.of());
        RuleReader.Frame frame = new RuleReader.Frame("plain", names, edition.conditions(), Optional.empty(), table);
        List<Rule> all = new ArrayList<>();
        Optional<Rule> plain = rules.read(own.filledBy(assumedThroughout), frame, true);
        plain.ifPresent(all::add);
        otherwise(fields, own.filledBy(assumedThroughout), frame, plain.isPresent())
                .forEach(all::add);
        return plain.isPresent() ? all : List.of();
    }

    private static Set<String> names(List<YamlNode.Entry> entries) {
        Set<String> names = new LinkedHashSet<>();
        entries.forEach(entry -> names.add(entry.key()));
        return names;
    }

    private void refuseBoth(Set<String> stated, List<YamlNode.Entry> assumed) {
        assumed.stream()
                .filter(entry -> stated.contains(entry.key()))
                .forEach(entry -> problems.add(
                        entry.keyPlace(),
                        "'" + entry.key() + "' is stated and assumed: it stands in one of them only"));
    }

    /** Known keys of {@code stated} or {@code assumed}; the others were noted. */
    private List<YamlNode.Entry> part(Fields fields, String key) {
        return fields.value(key)
                .map(node -> part(node, "'" + key + "'", rules.accepted(), problems))
                .orElse(List.of());
    }

    static List<YamlNode.Entry> part(YamlNode node, String what, List<String> accepted, Problems problems) {
        return Fields.of(node, what, accepted, problems)
                .map(inner -> inner.entries().stream()
                        .filter(entry -> accepted.contains(entry.key()))
                        .toList())
                .orElse(List.of());
    }

    private List<Rule> otherwise(Fields fields, Given plain, RuleReader.Frame frame, boolean complain) {
        List<String> accepted = new ArrayList<>(List.of("name"));
        accepted.addAll(rules.accepted());
        List<Fields> others = fields.list("otherwise").stream()
                .flatMap(node -> Fields.of(node, "an item of 'otherwise'", accepted, problems).stream())
                .toList();
        common.refuseTwice("name", others);
        List<Rule> read = new ArrayList<>();
        others.forEach(other -> other(other, plain, frame, complain).ifPresent(read::add));
        return read;
    }

    private Optional<Rule> other(Fields fields, Given plain, RuleReader.Frame frame, boolean complain) {
        String name = fields.requiredText("name").orElse("");
        if (name.equals("plain")) {
            problems.add(fields.place("name"), "'plain' is the name of the rule itself: choose another");
        }
        List<YamlNode.Entry> overrides = fields.entries().stream()
                .filter(entry -> rules.accepted().contains(entry.key()))
                .toList();
        if (overrides.isEmpty()) {
            problems.add(fields.place(), "this interpretation overrides no key of the rule");
        }
        Given given = plain.borrowed(fields.place()).with(overrides, true);
        return rules.read(
                given,
                new RuleReader.Frame(name, Set.of(), frame.edition(), Optional.of(names(overrides)), frame.table()),
                complain);
    }
}
