package org.ellwand.audit;

import java.util.Map;
import java.util.TreeMap;

/**
 * Why a verdict is not firmer, or why there is none: a key with its figures, beside the English text.
 *
 * @param key stable, e.g. {@code missing-bands}
 * @param figures what the text says in numbers and names, by name
 * @param text the English sentence, without a full stop
 */
public record Reason(String key, Map<String, Object> figures, String text) {
    public Reason {
        figures = Map.copyOf(new TreeMap<>(figures));
    }
}
