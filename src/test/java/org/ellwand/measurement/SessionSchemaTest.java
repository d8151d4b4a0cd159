package org.ellwand.measurement;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

class SessionSchemaTest {
    /** Faults of two entries together, of bands, of files: only the reader sees them. */
    private static final Set<String> READER_ONLY = Set.of(
            "absolute file",
            "cause in ms has no bands",
            "figure with an uncertainty of another kind",
            "file outside the folder",
            "missing file",
            "settings switched not said",
            "size list in dB",
            "size list with a gap",
            "size list whose ranges share an end",
            "size list with an overlap",
            "two causes of one name",
            "two levels of one weighting");

    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(JsonMapper.builder().build().readTree(SessionSchema.text()));

    static Stream<String> everySessionFile() throws IOException {
        try (Stream<Path> sessions = Files.walk(Path.of("measurements"));
                Stream<Path> sources = Files.walk(Path.of("src"))) {
            return Stream.concat(sessions, sources)
                    .filter(file -> file.toString().endsWith(".yaml")
                            && file.getParent().toString().contains("measurements"))
                    .map(Path::toString)
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("everySessionFile")
    void acceptsTheSessionsOfTheProject(String file) throws InputException {
        assertThat(SCHEMA.validate(json(YamlReader.read(Path.of(""), file)))).isEmpty();
        // As editors see it, with numbers that are numbers.
        assertThat(SCHEMA.validate(YAMLMapper.builder().build().readTree(Path.of(file))))
                .isEmpty();
    }

    @Test
    void refusesWhateverASchemaCanSee() throws Exception {
        Set<String> unseen = new TreeSet<>();
        try (Stream<BadSessionTest.Case> cases = BadSessionTest.cases()) {
            for (BadSessionTest.Case bad : cases.toList()) {
                boolean inTheSession = bad.expected().stream().anyMatch(problem -> problem.contains(".yaml:"));
                if (inTheSession && isYaml(bad.yaml()) && errors(bad.yaml()).isEmpty()) {
                    unseen.add(bad.name());
                }
            }
        }
        assertThat(unseen).containsExactlyInAnyOrderElementsOf(READER_ONLY);
    }

    @Test
    void declaredConditionsMayStandWhereOthersDo() throws InputException {
        String declared = BadSessionTest.YAML
                .replace("ear: crew", "conditions: [direction]\ndirection: front\near: crew")
                .replace("layout: rows", "layout: rows, direction: left");
        assertThat(errors(declared)).isEmpty();
        assertThat(errors(declared.replace("conditions: [direction]\n", ""))).isNotEmpty();
        assertThat(errors(declared.replace("layout: rows", "layout: rows, fundamental: 1 kHz")))
                .isNotEmpty();
    }

    @Test
    void aTraceMayHaveNoStepButNoHalfOfOne() throws InputException {
        String traces = "session: a\ntraces:\n  - {file: t.csv, device: open ear}\n";
        assertThat(errors(traces)).isEmpty();
        assertThat(errors(traces + "  - {file: t.csv, step: {at: 1 s, from: 55 dB SPL}}\n"))
                .isNotEmpty();
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
