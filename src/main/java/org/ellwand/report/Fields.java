package org.ellwand.report;

import java.util.LinkedHashMap;
import java.util.Map;

/** Collects what a template sees: names and texts, numbers, lists and further maps, in order. */
final class Fields {
    private final Map<String, Object> values = new LinkedHashMap<>();

    static Fields of(String name, Object value) {
        return new Fields().and(name, value);
    }

    Fields and(String name, Object value) {
        values.put(name, value);
        return this;
    }

    Fields and(Map<String, Object> more) {
        values.putAll(more);
        return this;
    }

    Map<String, Object> map() {
        return values;
    }
}
