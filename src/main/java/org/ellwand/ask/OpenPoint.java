package org.ellwand.ask;

import java.util.List;
import java.util.Map;

/**
 * One thing that a sentence leaves open.
 *
 * @param word the vague word that leaves it open, by its id; empty: the sentence is silent
 * @param as the word as the sentence writes it
 * @param taken the keys of the rule that the answer settles, with what was assumed meanwhile
 */
record OpenPoint(String word, String as, List<Map.Entry<String, String>> taken) {
    static OpenPoint ofKey(Map.Entry<String, String> assumed) {
        return new OpenPoint("", "", List.of(assumed));
    }

    Map<String, Object> model() {
        return Map.of(
                "word",
                word,
                "as",
                as,
                "key",
                taken.isEmpty() ? "" : taken.get(0).getKey(),
                "meanwhile",
                taken.stream().map(OpenPoint::pair).toList());
    }

    static Object pair(Map.Entry<String, String> assumed) {
        return Map.of("key", assumed.getKey(), "text", assumed.getValue());
    }
}
