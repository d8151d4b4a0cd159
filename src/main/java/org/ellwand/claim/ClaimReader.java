package org.ellwand.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.input.Fields;
import org.ellwand.input.Nearest;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;

/** Reads one claim of a claims file. */
final class ClaimReader {
    /** The keys of a claim. */
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
            "untested because",
            "impression",
            "asked",
            "reply",
            "table");

    private static final String ID = "[A-Za-z0-9-]+";
    private static final List<String> TABLE_KEYS = List.of("frequency", "mean", "deviation");

    private final RuleReader rules;
    private final List<Edition> editions;
    private final Map<String, YamlNode> fill;
    private final Problems problems;

    ClaimReader(RuleReader rules, List<Edition> editions, Map<String, YamlNode> fill, Problems problems) {
        this.rules = rules;
        this.editions = editions;
        this.fill = fill;
        this.problems = problems;
    }

    Optional<Claim> read(YamlNode node) {
        Fields fields = Fields.of(node, "a claim", problems);
        fields.refuseUnknown("a claim", KEYS);
        Optional<String> id = fields.required("id", "a claim is known by it");
        id.filter(i -> !i.matches(ID))
                .ifPresent(i -> problems.add(
                        fields.valuePlace("id"), "'id': '" + i + "' may hold letters, digits and '-' only"));
        Optional<Edition> edition = edition(fields);
        String quote =
                fields.required("quote", "a claim quotes the maker's words").orElse("");
        if (id.isEmpty() || edition.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> paraphrase = fields.text("paraphrase");
        if (!edition.get().mayBeQuoted() && paraphrase.isEmpty()) {
            problems.add(
                    fields.place(),
                    "'paraphrase' is missing: edition '" + edition.get().id() + "' may not be quoted");
        }
        return Optional.of(withRules(fields, id.get(), edition.get(), quote, paraphrase));
    }

    private Optional<Edition> edition(Fields fields) {
        Optional<String> id = fields.required("edition", "a sentence was published somewhere");
        Optional<Edition> edition =
                id.flatMap(i -> editions.stream().filter(e -> e.id().equals(i)).findFirst());
        if (id.isPresent() && edition.isEmpty()) {
            List<String> ids = editions.stream().map(Edition::id).toList();
            problems.add(
                    fields.valuePlace("edition"),
                    "'edition': there is no edition '" + id.get() + "'" + Nearest.hint(id.get(), ids)
                            + "; this file has " + String.join(", ", ids));
        }
        return edition;
    }

    private Claim withRules(Fields fields, String id, Edition edition, String quote, Optional<String> paraphrase) {
        Optional<String> untested = fields.text("untested because");
        Optional<Rule> plain = Optional.empty();
        List<Rule> otherwise = new ArrayList<>();
        if (untested.isPresent()) {
            refuseBeside(fields, List.of("stated", "assumed", "otherwise", "table"));
        } else {
            RuleSource source = plain(fields);
            Map<String, String> table = table(fields, source);
            plain = rules.read(source, edition, fill, table);
            otherwise = otherwise(fields, source, edition, table);
        }
        return new Claim(
                id,
                edition,
                fields.text("topic").orElse(id),
                quote,
                paraphrase,
                plain,
                untested,
                fields.text("because"),
                otherwise,
                fields.text("impression"),
                ClaimsReader.date(fields, "asked", problems),
                ClaimsReader.reply(fields, problems),
                fields.place());
    }

    private void refuseBeside(Fields fields, List<String> keys) {
        keys.stream()
                .filter(fields::has)
                .forEach(k -> problems.add(
                        fields.placeOf(k),
                        "'" + k + "' stands beside 'untested because': a claim has a rule or a reason"));
    }

    private RuleSource plain(Fields fields) {
        Map<String, YamlNode> values = new LinkedHashMap<>();
        Map<String, String> stated = keys(fields, "stated", values);
        Map<String, String> assumed = keys(fields, "assumed", values);
        if (!fields.has("stated") && !fields.has("assumed")) {
            problems.add(
                    fields.place(),
                    "'stated' is missing: a claim has a rule ('stated' and 'assumed') or 'untested because'");
        }
        return new RuleSource("plain", values, Set.copyOf(values.keySet()), stated, assumed, fields.place());
    }

    private Map<String, String> keys(Fields fields, String under, Map<String, YamlNode> values) {
        Map<String, String> written = new LinkedHashMap<>();
        Optional<Fields> part = fields.fields(under);
        if (part.isEmpty()) {
            return written;
        }
        part.get().refuseUnknown("'" + under + "'", rules.accepted());
        for (YamlNode.Entry entry : part.get().mapping().entries()) {
            if (values.containsKey(entry.key())) {
                problems.add(
                        entry.keyPlace(),
                        "'" + entry.key() + "' is stated already: a key is stated or assumed, not both");
            } else if (rules.accepted().contains(entry.key())) {
                values.put(entry.key(), entry.value());
                written.put(entry.key(), RuleSource.written(entry.value()));
            }
        }
        return written;
    }

    private List<Rule> otherwise(Fields fields, RuleSource plain, Edition edition, Map<String, String> table) {
        List<Rule> rules = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>(Set.of("plain"));
        for (YamlNode node : fields.list("otherwise")) {
            Fields other = Fields.of(node, "'otherwise'", problems);
            List<String> accepted = new ArrayList<>(this.rules.accepted());
            accepted.add("name");
            other.refuseUnknown("'otherwise'", accepted);
            Optional<String> name = other.required("name", "another interpretation is known by it");
            if (name.isPresent() && !names.add(name.get())) {
                problems.add(other.valuePlace("name"), "'name': '" + name.get() + "' is taken");
            }
            name.flatMap(n -> this.rules.read(override(n, other, plain), edition, fill, table))
                    .ifPresent(rules::add);
        }
        return rules;
    }

    private RuleSource override(String name, Fields other, RuleSource plain) {
        Map<String, YamlNode> values = new LinkedHashMap<>(plain.values());
        Map<String, String> assumed = new LinkedHashMap<>();
        for (YamlNode.Entry entry : other.mapping().entries()) {
            if (rules.accepted().contains(entry.key())) {
                values.put(entry.key(), entry.value());
                assumed.put(entry.key(), RuleSource.written(entry.value()));
            }
        }
        return new RuleSource(name, values, Set.copyOf(assumed.keySet()), Map.of(), assumed, other.place());
    }

    /** A maker's own printed table; only a rating can use one. */
    private Map<String, String> table(Fields fields, RuleSource source) {
        if (!fields.has("table")) {
            return Map.of();
        }
        if (!source.text(RuleKey.QUANTITY).equals(Optional.of("rating"))) {
            problems.add(fields.placeOf("table"), "'table' is for the quantity 'rating'");
        }
        Map<String, String> table = new LinkedHashMap<>();
        fields.fields("table").ifPresent(t -> {
            t.refuseUnknown("'table'", TABLE_KEYS);
            Set<Integer> lengths = new LinkedHashSet<>();
            for (String key : TABLE_KEYS) {
                List<String> texts = t.texts(key);
                lengths.add(texts.size());
                table.put(key, String.join(", ", texts));
            }
            if (lengths.size() != 1) {
                problems.add(t.place(), "'table': frequency, mean and deviation must be equally long lists");
            }
        });
        return table;
    }
}
