package org.ellwand.audit;

import java.util.List;
import java.util.function.Function;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.JacksonSerializable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.jsontype.TypeSerializer;

/** An array of which one member at a time is there as a tree, while it is written. */
record InTurn<T>(List<T> values, Function<T, JsonNode> form) implements JacksonSerializable {
    @Override
    public void serialize(JsonGenerator out, SerializationContext context) {
        out.writeStartArray();
        for (T value : values) {
            context.writeTree(out, form.apply(value));
        }
        out.writeEndArray();
    }

    @Override
    public void serializeWithType(JsonGenerator out, SerializationContext context, TypeSerializer types) {
        serialize(out, context);
    }
}
