package org.ellwand.claim;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.ellwand.input.InputException;
import org.ellwand.input.YamlNode;
import org.ellwand.input.YamlReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

class ClaimsSchemaTest {
    /** Faults of phrases, of keys that do not fit together, of places outside the file: only the reader sees them. */
    private static final Set<String> READER_ONLY = Set.of(
            "all in a list",
            "backward range",
            "bad phrase",
            "bands in words",
            "bands that are no frequencies",
            "bare limit",
            "between and the same key",
            "confidence",
            "decimal comma",
            "drop",
            "frame of an output level",
            "harmonics",
            "interpretation with a useless tolerance",
            "key the quantity cannot use",
            "level of quiet",
            "level that is none",
            "level weighting for nothing",
            "level without weighting",
            "limit against its weighting",
            "limit in another unit",
            "limit weighting against weighting",
            "limit weighting of a difference of output levels",
            "limit weighting of a spread",
            "limit without a unit",
            "limit without weighting",
            "method of another rating",
            "missing keys of a quantity",
            "missing weighting",
            "no limit",
            "no quantity",
            "nothing to compare",
            "paraphrase",
            "performance",
            "population",
            "rating without performance",
            "ratio in dB",
            "sense without a bare number",
            "share",
            "stated and assumed",
            "table of another quantity",
            "target that is not there",
            "tolerance of another unit",
            "tolerance without a bare number",
            "two ids",
            "two interpretations of a name",
            "uneven table",
            "unknown edition",
            "weighting of single bands");

    private static final Schema SCHEMA = schema(Set.of("direction"));

    private static Schema schema(Set<String> declared) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(JsonMapper.builder().build().readTree(ClaimsSchema.text(Quantities.forms(), declared)));
    }

    @Test
    void acceptsTheExample() throws Exception {
        assertThat(errors(ClaimsFolder.resource("skerry.yaml"))).isEmpty();
    }

    /** All but the one that a test of {@code start} copies: it is a file with a product's name and nothing else. */
    static Stream<Path> everyClaimsFile() throws IOException {
        try (Stream<Path> claims = Files.walk(Path.of("claims"));
                Stream<Path> sources = Files.walk(Path.of("src"))) {
            return Stream.concat(claims, sources)
                    .filter(file -> file.toString().endsWith(".yaml")
                            && !file.endsWith("made-up.yaml")
                            && file.getParent().toString().contains("claims"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("everyClaimsFile")
    void acceptsEveryClaimsFileOfTheProject(Path file) throws Exception {
        Schema schema = schema(Set.of("hand", "direction", "distance", "sound", "applied", "washes"));
        assertThat(schema.validate(json(YamlReader.read(Path.of(""), file.toString()))))
                .isEmpty();
        // As editors see it, with numbers that are numbers.
        assertThat(schema.validate(YAMLMapper.builder().build().readTree(file))).isEmpty();
    }

    @Test
    void refusesWhateverASchemaCanSee() throws Exception {
        Set<String> unseen = new TreeSet<>();
        for (RefusedClaimsTest.Case refused : RefusedClaimsTest.cases()) {
            if (isYaml(refused.file()) && errors(refused.file()).isEmpty()) {
                unseen.add(refused.name());
            }
        }
        assertThat(unseen).containsExactlyInAnyOrderElementsOf(READER_ONLY);
    }

    @Test
    void describesEveryKeyOfARule() {
        ObjectNode schema = ClaimsSchema.of(Quantities.forms(), Set.of());
        JsonNode keys = schema.at("/properties/assumed/properties");
        for (RuleKey key : RuleKey.values()) {
            assertThat(keys.path(key.text()).path("description").asString())
                    .isEqualTo(key.description() + ": " + key.accepted());
        }
    }

    private static boolean isYaml(String text) {
        try {
            YamlReader.parse(text, "a.yaml");
            return true;
        } catch (InputException e) {
            return false;
        }
    }

    private static List<Error> errors(String text) throws InputException {
        return SCHEMA.validate(json(YamlReader.parse(text, "a.yaml")));
    }

    private static JsonNode json(YamlNode node) {
        if (node instanceof YamlNode.Mapping mapping) {
            ObjectNode object = JsonNodeFactory.instance.objectNode();
            mapping.entries().forEach(entry -> object.set(entry.key(), json(entry.value())));
            return object;
        }
        if (node instanceof YamlNode.Sequence sequence) {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            sequence.items().forEach(item -> array.add(json(item)));
            return array;
        }
        return JsonNodeFactory.instance.stringNode(((YamlNode.Scalar) node).text());
    }
}
