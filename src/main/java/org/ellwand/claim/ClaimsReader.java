package org.ellwand.claim;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.ellwand.input.Fields;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;
import org.ellwand.input.YamlReader;

/** Reads claims files: one product a file, directly in {@code claims/}. */
public final class ClaimsReader {
    static final List<String> KEYS = List.of(
            "product",
            "maker",
            "about",
            "decision",
            "samples",
            "disclosure",
            "recommendation",
            "asked",
            "reply",
            "assumed",
            "editions",
            "claims");
    static final List<String> SAMPLE_KEYS = List.of("unit", "obtained");
    static final List<String> DECISION_KEYS = List.of("confidence");

    private static final double CONFIDENCE = 0.95;

    private final Map<String, QuantityForm> forms = new LinkedHashMap<>();
    private final Set<String> declaredConditions;

    /**
     * A reader.
     *
     * @param forms the quantities that claims may be about
     * @param declaredConditions further conditions that sessions declare
     */
    public ClaimsReader(List<QuantityForm> forms, Set<String> declaredConditions) {
        forms.forEach(form -> this.forms.put(form.name(), form));
        this.declaredConditions = new TreeSet<>(declaredConditions);
    }

    /**
     * Reads every claims file of a folder, by name.
     *
     * @param folder the audited folder
     * @return one product a file, in the order of the files' names
     * @throws InputException with the problems of all files, or where there is no claims file
     */
    public List<Product> readAll(Path folder) throws InputException {
        List<String> files = files(folder);
        if (files.isEmpty()) {
            throw new InputException(
                    Place.ofFile("claims"), "there is no claims file here: put one, as claims/product.yaml, into it");
        }
        Problems problems = new Problems();
        List<Product> products = new ArrayList<>();
        for (String file : files) {
            try {
                Product product = read(folder, file);
                products.stream()
                        .filter(other -> other.name().equals(product.name()))
                        .forEach(other -> problems.add(
                                Place.ofFile(file),
                                "is about '" + product.name() + "', and so is " + other.file()
                                        + ": a product has one file, with all its editions"));
                products.add(product);
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        problems.throwIfAny();
        return List.copyOf(products);
    }

    /**
     * {@return the claims files of a folder, sorted by name, relative to it}
     *
     * @param folder the audited folder
     * @throws InputException where the folder of claims cannot be listed
     */
    public static List<String> files(Path folder) throws InputException {
        Path claims = folder.resolve("claims");
        if (!Files.isDirectory(claims)) {
            return List.of();
        }
        try (Stream<Path> paths = Files.list(claims)) {
            return paths.filter(Files::isRegularFile)
                    .map(path -> String.valueOf(path.getFileName()))
                    .filter(name -> name.endsWith(".yaml") || name.endsWith(".yml"))
                    .sorted()
                    .map(name -> "claims/" + name)
                    .toList();
        } catch (IOException e) {
            throw new InputException(Place.ofFile("claims"), "the folder cannot be read: " + e.getMessage());
        }
    }

    /**
     * Reads one claims file.
     *
     * @param folder the audited folder
     * @param file path in it, with forward slashes
     * @return the product with its editions and claims
     * @throws InputException with everything that is wrong with it
     */
    public Product read(Path folder, String file) throws InputException {
        Problems problems = new Problems();
        Optional<Product> product = Fields.of(YamlReader.read(folder, file), "a claims file", KEYS, problems)
                .map(fields -> product(folder, file, fields, problems));
        problems.throwIfAny();
        return product.orElseThrow();
    }

    private Product product(Path folder, String file, Fields fields, Problems problems) {
        RuleReader rules = new RuleReader(forms, declaredConditions, new TargetReader(folder, problems), problems);
        ProductFields common = new ProductFields(problems);
        List<YamlNode.Entry> assumed = fields.value("assumed")
                .map(node -> ClaimReader.part(node, "'assumed'", rules.accepted(), problems))
                .orElse(List.of());
        Map<String, Edition> editions =
                new EditionReader(rules.conditions(), problems).read(fields.requiredList("editions"));
        List<Claim> claims = new ClaimReader(rules, editions, assumed, problems).read(fields.requiredList("claims"));
        return new Product(
                file,
                fields.requiredText("product").orElse(""),
                fields.text("maker"),
                fields.text("about"),
                confidence(fields, common, problems),
                samples(fields, problems),
                fields.text("disclosure"),
                fields.text("recommendation"),
                common.date(fields, "asked"),
                common.reply(fields),
                List.copyOf(editions.values()),
                claims);
    }

    private static double confidence(Fields fields, ProductFields common, Problems problems) {
        return fields.value("decision")
                .flatMap(node -> Fields.of(node, "'decision'", DECISION_KEYS, problems))
                .flatMap(decision -> decision.requiredText("confidence")
                        .flatMap(text ->
                                common.phrase(decision.place("confidence"), "confidence", text, Shares::confidence)))
                .orElse(CONFIDENCE);
    }

    private static List<Sample> samples(Fields fields, Problems problems) {
        return fields.list("samples").stream()
                .flatMap(node -> Fields.of(node, "a sample", SAMPLE_KEYS, problems).stream())
                .map(sample -> new Sample(sample.requiredText("unit").orElse(""), sample.text("obtained")))
                .toList();
    }
}
