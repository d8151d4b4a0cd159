package org.ellwand.ask;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.ellwand.claim.RuleKey;

/**
 * What several sentences are silent about, and so is asked once: each key with a letter, in the order of the rule's keys.
 *
 * @param letters the key that each letter asks about
 */
record Common(Map<String, String> letters) {
    /** So many sentences make a question common. */
    private static final int SEVERAL = 3;

    private static final int ALPHABET = 26;

    static Common of(List<OpenClaim> claims) {
        Map<String, Integer> counts =
                new TreeMap<>(Comparator.comparingInt(Common::order).thenComparing(Comparator.naturalOrder()));
        claims.forEach(claim -> claim.silent().keySet().forEach(key -> counts.merge(key, 1, Integer::sum)));
        Map<String, String> letters = new LinkedHashMap<>();
        counts.forEach((key, count) -> {
            if (count >= SEVERAL && letters.size() < ALPHABET) {
                letters.put(String.valueOf((char) ('A' + letters.size())), key);
            }
        });
        return new Common(letters);
    }

    private static int order(String key) {
        return RuleKey.named(key).map(RuleKey::ordinal).orElse(RuleKey.values().length);
    }

    boolean holds(String key) {
        return letters.containsValue(key);
    }

    /** The letters of the questions that concern a claim. */
    List<String> of(OpenClaim claim) {
        return letters.entrySet().stream()
                .filter(letter -> claim.silent().containsKey(letter.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The questions, each with what was assumed and in which sentences. */
    List<Object> model(List<OpenClaim> claims) {
        return letters.entrySet().stream()
                .map(letter -> (Object) Map.of(
                        "letter", letter.getKey(),
                        "key", letter.getValue(),
                        "meanwhile", meanwhile(letter.getValue(), claims)))
                .toList();
    }

    private static List<Object> meanwhile(String key, List<OpenClaim> claims) {
        List<String> texts = claims.stream()
                .filter(claim -> claim.silent().containsKey(key))
                .map(claim -> claim.silent().get(key))
                .distinct()
                .toList();
        return texts.stream()
                .map(text -> (Object) Map.of(
                        "key", key,
                        "text", text,
                        "sentences",
                                IntStream.range(0, claims.size())
                                        .filter(i -> text.equals(
                                                claims.get(i).silent().get(key)))
                                        .mapToObj(i -> i + 1)
                                        .toList()))
                .toList();
    }
}
