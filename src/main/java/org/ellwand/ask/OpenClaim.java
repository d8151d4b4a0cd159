package org.ellwand.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Rule;

/**
 * What one claim leaves open.
 *
 * @param vague what its words do not fix; a word's question takes the assumptions that the answer would settle
 * @param silent what had to be assumed besides, by key
 */
record OpenClaim(Claim claim, List<OpenPoint> vague, Map<String, String> silent) {
    static OpenClaim of(Claim claim) {
        Map<String, String> silent =
                new LinkedHashMap<>(claim.rule().map(Rule::assumed).orElse(Map.of()));
        List<OpenPoint> vague = new ArrayList<>();
        for (VagueWord.Found found : VagueWord.in(claim.words())) {
            List<Map.Entry<String, String>> taken = silent.entrySet().stream()
                    .filter(entry -> found.word().keys().contains(entry.getKey()))
                    .map(entry -> Map.entry(entry.getKey(), entry.getValue()))
                    .toList();
            taken.forEach(entry -> silent.remove(entry.getKey()));
            vague.add(new OpenPoint(found.word().id(), found.as(), taken));
        }
        return new OpenClaim(claim, vague, silent);
    }

    /** Whether there is anything to ask. A sentence that cannot be tested leaves open what it rests on. */
    boolean isOpen() {
        return !silent.isEmpty() || !vague.isEmpty() || claim.rule().isEmpty();
    }

    /** What is open in this sentence alone. */
    List<OpenPoint> points(Common common) {
        List<OpenPoint> points = new ArrayList<>(vague);
        silent.forEach((key, text) -> {
            if (!common.holds(key)) {
                points.add(OpenPoint.ofKey(Map.entry(key, text)));
            }
        });
        return points;
    }
}
