package org.ellwand.claim;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.ellwand.amount.Amount;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.input.Fields;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;
import org.ellwand.input.YamlReader;

/** Reads the claims files of a folder. It is handed what it must know of the quantities and of the sessions' conditions. */
public final class ClaimsReader {
    /** The keys of a claims file. */
    static final List<String> KEYS = List.of(
            "product",
            "maker",
            "about",
            "decision",
            "samples",
            "disclosure",
            "recommendation",
            "assumed",
            "asked",
            "reply",
            "editions",
            "claims");

    static final List<String> EDITION_KEYS = List.of("id", "source", "dated", "kept", "conditions", "may be quoted");

    /** Conditions of an edition may be any that a rule may name, but not the wearer's. */
    static final List<String> EDITION_CONDITIONS = List.of("setting", "fit", "firmware", "unit");

    private static final String DATE = "\\d{4}(-(0[1-9]|1[0-2])(-(0[1-9]|[12]\\d|3[01]))?)?";
    private static final double DEFAULT_CONFIDENCE = 0.95;

    private final Path folder;
    private final List<QuantityForm> forms;
    private final Set<String> declaredConditions;
    private final SortedSet<String> sheets = new TreeSet<>();

    /**
     * @param folder the audited folder, which holds {@code claims/}
     * @param forms what rules may be about
     * @param declaredConditions names of conditions that sessions declare, then usable as rule keys
     */
    public ClaimsReader(Path folder, List<QuantityForm> forms, Set<String> declaredConditions) {
        this.folder = folder;
        this.forms = List.copyOf(forms);
        this.declaredConditions = Set.copyOf(declaredConditions);
    }

    /**
     * Reads every claims file directly in {@code claims/}, in order of their names; folders below are not read.
     *
     * @throws InputException with the problems of all files, and where there is no claims file
     */
    public List<Product> readAll() throws InputException {
        List<String> files = files();
        if (files.isEmpty()) {
            throw new InputException(
                    Place.ofFile("claims"),
                    "no claims file: a folder 'claims' with at least one .yaml file is expected");
        }
        Problems problems = new Problems();
        List<Product> products = new ArrayList<>();
        for (String file : files) {
            try {
                products.add(read(file));
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        problems.throwIfAny();
        return products;
    }

    /** Curve sheets that rules named, as paths below the folder; complete after reading. */
    public SortedSet<String> sheets() {
        return new TreeSet<>(sheets);
    }

    private List<String> files() throws InputException {
        Path claims = folder.resolve("claims");
        if (!Files.isDirectory(claims)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(claims)) {
            return entries.filter(Files::isRegularFile)
                    .map(p -> p.getFileName().toString())
                    .filter(n -> n.endsWith(".yaml") || n.endsWith(".yml"))
                    .sorted()
                    .map(n -> "claims/" + n)
                    .toList();
        } catch (IOException e) {
            throw new InputException(Place.ofFile("claims"), "cannot be read: " + e.getMessage());
        }
    }

    /** Reads one claims file; the path is relative to the folder. */
    public Product read(String file) throws InputException {
        Problems problems = new Problems();
        Fields fields = Fields.of(YamlReader.read(folder, file), "a claims file", problems);
        fields.refuseUnknown("a claims file", KEYS);
        TargetReader targets = new TargetReader(folder.resolve("claims"));
        RuleReader rules = new RuleReader(forms, declaredConditions, targets, problems);
        List<Edition> editions = editions(fields, problems);
        ClaimReader claims = new ClaimReader(rules, editions, fill(fields, rules, problems), problems);
        Product product = new Product(
                file,
                fields.required("product", "a claims file is about one product").orElse(""),
                fields.text("maker"),
                fields.text("about"),
                confidence(fields, problems),
                samples(fields, problems),
                fields.text("disclosure"),
                fields.text("recommendation"),
                date(fields, "asked", problems),
                reply(fields, problems),
                editions,
                claims(fields, claims, problems));
        problems.throwIfAny();
        sheets.addAll(targets.sheets());
        return product;
    }

    private static Map<String, YamlNode> fill(Fields fields, RuleReader rules, Problems problems) {
        Map<String, YamlNode> fill = new LinkedHashMap<>();
        fields.fields("assumed").ifPresent(assumed -> {
            assumed.refuseUnknown("'assumed'", rules.accepted());
            assumed.mapping().entries().forEach(e -> fill.put(e.key(), e.value()));
        });
        for (String key : List.of("quantity", "limit", "between")) {
            if (fill.remove(key) != null) {
                problems.add(
                        fields.placeOf("assumed"),
                        "'assumed' of the whole file cannot hold '" + key + "': each claim says it");
            }
        }
        return fill;
    }

    private static List<Claim> claims(Fields fields, ClaimReader reader, Problems problems) {
        if (!fields.has("claims")) {
            problems.add(fields.place(), "'claims' is missing: a claims file holds at least one");
        }
        List<Claim> claims = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        for (YamlNode node : fields.list("claims")) {
            reader.read(node).ifPresent(claim -> {
                if (!ids.add(claim.id())) {
                    problems.add(claim.place(), "'id': '" + claim.id() + "' is the id of an earlier claim");
                }
                claims.add(claim);
            });
        }
        return claims;
    }

    private static List<Edition> editions(Fields fields, Problems problems) {
        if (!fields.has("editions")) {
            problems.add(fields.place(), "'editions' is missing: words were published somewhere");
        }
        List<Edition> editions = new ArrayList<>();
        for (YamlNode node : fields.list("editions")) {
            Fields edition = Fields.of(node, "an edition", problems);
            edition.refuseUnknown("an edition", EDITION_KEYS);
            Edition read = new Edition(
                    edition.required("id", "claims name their edition by it").orElse(""),
                    edition.required("source", "a reader wants to know where the words stood")
                            .orElse(""),
                    requiredDate(edition, problems),
                    edition.text("kept"),
                    conditions(edition),
                    mayBeQuoted(edition, problems));
            if (editions.stream().anyMatch(e -> e.id().equals(read.id()))) {
                problems.add(edition.valuePlace("id"), "'id': '" + read.id() + "' is the id of an earlier edition");
            }
            editions.add(read);
        }
        return editions;
    }

    private static Map<String, String> conditions(Fields edition) {
        edition.fields("conditions").ifPresent(c -> c.refuseUnknown("'conditions'", EDITION_CONDITIONS));
        return edition.textMap("conditions");
    }

    private static boolean mayBeQuoted(Fields edition, Problems problems) {
        return switch (edition.text("may be quoted").orElse("yes")) {
            case "yes" -> true;
            case "no" -> false;
            default -> {
                problems.add(edition.valuePlace("may be quoted"), "'may be quoted': 'yes' or 'no' is expected");
                yield true;
            }
        };
    }

    private static String requiredDate(Fields edition, Problems problems) {
        if (!edition.has("dated")) {
            problems.add(edition.place(), "'dated' is missing: words change with time");
        }
        return date(edition, "dated", problems).orElse("");
    }

    static Optional<String> date(Fields fields, String key, Problems problems) {
        Optional<String> date = fields.text(key);
        date.filter(d -> !d.matches(DATE))
                .ifPresent(d -> problems.add(
                        fields.valuePlace(key),
                        "'" + key + "': '" + d + "' is no date: 2026-05-04, 2026-05 or 2026 is expected"));
        return date;
    }

    static Optional<Reply> reply(Fields fields, Problems problems) {
        return fields.fields("reply").map(reply -> {
            reply.refuseUnknown("'reply'", List.of("dated", "text"));
            if (!reply.has("dated")) {
                problems.add(reply.place(), "'dated' is missing: a reply came at some time");
            }
            return new Reply(
                    date(reply, "dated", problems).orElse(""),
                    reply.required("text", "a reply is printed as it came").orElse(""));
        });
    }

    private static List<Sample> samples(Fields fields, Problems problems) {
        List<Sample> samples = new ArrayList<>();
        for (YamlNode node : fields.list("samples")) {
            Fields sample = Fields.of(node, "a sample", problems);
            sample.refuseUnknown("a sample", List.of("unit", "obtained"));
            samples.add(new Sample(
                    sample.required("unit", "a sample is known by it").orElse(""), sample.text("obtained")));
        }
        return samples;
    }

    private static double confidence(Fields fields, Problems problems) {
        Optional<Fields> decision = fields.fields("decision");
        decision.ifPresent(d -> d.refuseUnknown("'decision'", List.of("confidence")));
        Optional<String> text = decision.flatMap(d -> d.text("confidence"));
        if (text.isEmpty()) {
            return DEFAULT_CONFIDENCE;
        }
        try {
            Amount amount = Phrases.amount(text.get());
            if (amount.unit() == Unit.PERCENT && amount.value() > 50 && amount.value() < 100) {
                return amount.value() / 100;
            }
        } catch (PhraseException e) {
            // told below, with what is accepted
        }
        problems.add(
                decision.map(d -> d.valuePlace("confidence")).orElse(fields.place()),
                "'confidence': '" + text.get()
                        + "' is not accepted: a percentage above 50 % and below 100 %, as '95 %'");
        return DEFAULT_CONFIDENCE;
    }
}
