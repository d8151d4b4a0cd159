package org.ellwand.compare;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The record of a comparison: the model of its templates, as JSON. */
public final class ComparisonJson {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private ComparisonJson() {}

    /**
     * {@return UTF-8, numbers in full, one line feed at the end; what is absent is {@code ""}}
     *
     * @param model of {@link ComparisonModel}
     */
    public static byte[] write(Map<String, Object> model) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("format", "ellwand-comparison");
        document.put("version", 1);
        document.putAll(model);
        String text = MAPPER.writeValueAsString(document).replace("\r\n", "\n");
        return (text + "\n").getBytes(StandardCharsets.UTF_8);
    }
}
