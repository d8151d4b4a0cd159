package org.ellwand.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words of advertising that leave the same thing open wherever they stand, so that each has a standard question (common
 * practice, no source). The questions themselves stand in the templates.
 */
enum VagueWord {
    NATURAL("natural(?:ly)?|transparent(?:ly)?|clear(?:ly)?|lifelike", "bands, tolerance, level"),
    UP_TO("up to|as much as|at best|at its best", "statistic"),
    TYPICAL("typical(?:ly)?|average|usually", "statistic, ears, units"),
    ABOUT("about|around|near|nearly|roughly|approximately", "tolerance"),
    FLAT("flat|evenly|(?:is|are|sounds?|stays?) even|true", "bands, tolerance"),
    INSTANT("instant(?:ly)?|fast|quick(?:ly)?|at once|immediate(?:ly)?", "within, tolerance"),
    HALF("by (?:a )?half|in half|halves|halved|half (?:as loud|the (?:noise|sound|loudness))", "limit"),
    SAFE("safe(?:ly|ty)?|protects?|protection|protective", ""),
    CERTIFIED("certified|certificate|tested|approved", ""),
    SAME("same as|identical to|as good as|the equal of", "tolerance");

    private final Pattern pattern;
    private final String keys;

    VagueWord(String words, String keys) {
        this.pattern = Pattern.compile("\\b(?:" + words + ")\\b", Pattern.CASE_INSENSITIVE);
        this.keys = keys;
    }

    /**
     * One that stands in a sentence.
     *
     * @param as the way it is written there
     */
    record Found(VagueWord word, String as) {}

    /** Every one in a sentence, in the order in which they stand there. */
    static List<Found> in(String sentence) {
        record At(int start, Found found) {}
        List<At> all = new ArrayList<>();
        for (VagueWord word : values()) {
            Matcher matcher = word.pattern.matcher(sentence);
            if (matcher.find()) {
                all.add(new At(matcher.start(), new Found(word, matcher.group())));
            }
        }
        all.sort((a, b) -> Integer.compare(a.start(), b.start()));
        return all.stream().map(At::found).toList();
    }

    /** The name by which templates know it. */
    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The keys of a rule that the answer to its question would settle. */
    Set<String> keys() {
        return Set.of(keys.split(", "));
    }
}
