package org.ellwand.check;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ellwand.check.Finding.Consequence;

/**
 * What one fault makes other checks say. Left out, so that a reader is told the fault and not its shadows; the fault keeps its
 * consequence, which is the gravest.
 */
final class Echoes {
    private static final Set<String> BLOCKED = Set.of(new TubeExcess().name(), new TubeAtBackground().name());

    private final Map<String, List<Finding>> bySession;

    /** @param found of all sessions */
    Echoes(List<Finding> found) {
        bySession = found.stream().collect(Collectors.groupingBy(Finding::session, TreeMap::new, Collectors.toList()));
    }

    /** The findings that are none. */
    List<Finding> leftOut(List<Finding> found) {
        Map<String, SwappedInsertions> swaps = new TreeMap<>();
        bySession.forEach((session, findings) -> swaps.put(session, new SwappedInsertions(findings)));
        return found.stream()
                .filter(f -> !Optional.ofNullable(swaps.get(f.session()))
                                .filter(s -> s.explain(f))
                                .isPresent()
                        && !isOfOrder(f)
                        && !isOfTake(f)
                        && !isOfHowl(f)
                        && !isOfTube(f))
                .toList();
    }

    /** Where gain was taken for attenuation the settings turn round, and beside a session in which they did, one in order seems turned. */
    private boolean isOfOrder(Finding finding) {
        String key = finding.remark().key();
        boolean aboutOrder = key.equals(SettingOrder.DIFFERENT) || key.equals(SettingOrder.OUT_OF_ORDER);
        if (!aboutOrder) {
            return false;
        }
        if (has(finding.session(), f -> f.remark().key().equals(SignReversed.WHEN_LOUD))) {
            return true;
        }
        return key.equals(SettingOrder.DIFFERENT)
                && (isTurned(finding.session())
                        || isTurned(String.valueOf(finding.remark().figures().get("session"))));
    }

    private boolean isTurned(String session) {
        return has(
                session,
                f -> f.remark().key().equals(SignReversed.WHEN_LOUD)
                        || f.remark().key().equals(SettingOrder.OUT_OF_ORDER));
    }

    /** A take of the other ear is no tube that moved, nor music that differs. */
    private boolean isOfTake(Finding finding) {
        boolean aboutTakes = finding.check().equals(new ReturnCheck().name())
                || finding.check().equals(new MusicRepeat().name());
        return aboutTakes
                && has(
                        finding.session(),
                        f -> f.remark().key().equals(SwappedTakes.KEY)
                                && f.consequence() == Consequence.UNUSABLE
                                && ear(f).equals(ear(finding)));
    }

    /** A product that howls limits its own readings in the bands of the howl. */
    private boolean isOfHowl(Finding finding) {
        return finding.remark().key().equals(OwnNoise.LIMITED)
                && has(
                        finding.session(),
                        f -> f.check().equals(new FeedbackTone().name())
                                && f.consequence() == Consequence.UNUSABLE
                                && f.bands().containsAll(finding.bands()));
    }

    /** Beside an insertion whose tube is blocked, which seems to take most off, the others seem to leak. */
    private boolean isOfTube(Finding finding) {
        return finding.remark().key().equals(SlitLeak.LESS_THAN_BEST)
                && has(
                        finding.session(),
                        f -> BLOCKED.contains(f.check())
                                && f.consequence() == Consequence.UNUSABLE
                                && ear(f).equals(ear(finding)));
    }

    private static Set<String> ear(Finding finding) {
        return Arrays.stream(finding.reading().split(", ", -1))
                .filter(part -> part.startsWith("ear=") || part.startsWith("side=") || part.startsWith("head="))
                .collect(Collectors.toSet());
    }

    private boolean has(String session, Predicate<Finding> wanted) {
        return bySession.getOrDefault(session, List.of()).stream().anyMatch(wanted);
    }
}
