package org.ellwand.audit;

import java.io.ByteArrayOutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * How values stand in the record: numbers in their shortest digits that read back as the same double, the same on every
 * Java; what is absent or not finite as {@code null}.
 */
final class JsonForm {
    static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    // Double.toString is not the shortest before Java 19, so the writer's own digits are asked for.
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .build();

    private JsonForm() {}

    /** UTF-8, two spaces of indentation, line feeds, one at the end. */
    static byte[] write(JsonNode document) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        MAPPER.writer().with(layout()).writeValue(new OutputStreamWriter(bytes, StandardCharsets.UTF_8), document);
        bytes.write('\n');
        return bytes.toByteArray();
    }

    /** An array whose members are put into form one after the other, when it is written: a lot has tens of thousands. */
    static <T> JsonNode inTurn(List<T> values, Function<T, JsonNode> form) {
        return NODES.pojoNode(new InTurn<>(values, form));
    }

    private static DefaultPrettyPrinter layout() {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        Separators separators = new Separators()
                .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator("");
        return new DefaultPrettyPrinter()
                .withSeparators(separators)
                .withObjectIndenter(lines)
                .withArrayIndenter(lines);
    }

    static JsonNode number(double value) {
        // Adding zero turns -0.0 into 0.0.
        return Double.isFinite(value) ? NODES.numberNode(value + 0.0) : NODES.nullNode();
    }

    static JsonNode number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : NODES.nullNode();
    }

    /** A nominal frequency: 125 rather than 125.0, as it is spoken. */
    static JsonNode frequency(double hz) {
        return hz == Math.rint(hz) && Math.abs(hz) < 1e15 ? NODES.numberNode((long) hz) : number(hz);
    }

    static JsonNode frequency(OptionalDouble hz) {
        return hz.isPresent() ? frequency(hz.getAsDouble()) : NODES.nullNode();
    }

    /** {@code [lower, upper]}. */
    static JsonNode interval(OptionalDouble lower, OptionalDouble upper) {
        if (lower.isEmpty() && upper.isEmpty()) {
            return NODES.nullNode();
        }
        return NODES.arrayNode().add(number(lower)).add(number(upper));
    }

    static JsonNode text(Optional<String> text) {
        return text.isPresent() ? NODES.stringNode(text.get()) : NODES.nullNode();
    }

    static JsonNode texts(Iterable<String> texts) {
        var array = NODES.arrayNode();
        texts.forEach(array::add);
        return array;
    }

    /** Sorted by name, whatever order the map has. */
    static ObjectNode object(Map<String, ?> values) {
        ObjectNode object = NODES.objectNode();
        new TreeMap<>(values).forEach((name, value) -> object.set(name, any(value)));
        return object;
    }

    private static JsonNode any(Object value) {
        if (value instanceof Integer || value instanceof Long) {
            return NODES.numberNode(((Number) value).longValue());
        }
        if (value instanceof Number number) {
            return frequency(number.doubleValue());
        }
        if (value instanceof Boolean flag) {
            return NODES.booleanNode(flag);
        }
        if (value instanceof Iterable<?> values) {
            var array = NODES.arrayNode();
            values.forEach(each -> array.add(any(each)));
            return array;
        }
        return NODES.stringNode(value.toString());
    }
}
