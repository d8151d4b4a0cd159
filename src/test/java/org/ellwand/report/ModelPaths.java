package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** The names in a model, as {@code products[].claims[].verdict}. */
final class ModelPaths {
    private final SortedSet<String> paths = new TreeSet<>();

    static SortedSet<String> of(Object model) {
        ModelPaths found = new ModelPaths();
        found.walk("", model);
        return found.paths;
    }

    private void walk(String path, Object value) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((name, inner) -> walk(path.isEmpty() ? name.toString() : path + "." + name, inner));
        } else if (value instanceof List<?> list) {
            paths.add(path + "[]");
            list.forEach(inner -> walk(path + "[]", inner));
        } else if (!path.endsWith("[]")) {
            paths.add(path);
        }
    }
}
