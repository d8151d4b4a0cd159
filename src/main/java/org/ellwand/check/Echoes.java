package org.ellwand.check;

import java.util.Arrays;
import java.util.HashSet;
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

    private static final Set<String> OF_READING = Set.of("stimulus=", "insertion=", "take=");

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
        // Only what the graver finding is about as well: readings under other sounds keep theirs.
        if (has(finding.session(), f -> isTurned(f) && !f.remark().key().equals(key) && covers(f, finding))) {
            return true;
        }
        String other = String.valueOf(finding.remark().figures().get("session"));
        return key.equals(SettingOrder.DIFFERENT)
                && has(other, f -> isTurned(f) && device(f).equals(device(finding)));
    }

    private static boolean isTurned(Finding finding) {
        String key = finding.remark().key();
        return key.equals(SignReversed.WHEN_LOUD) || key.equals(SettingOrder.OUT_OF_ORDER);
    }

    /** Whether a finding is about every reading that another one is about. */
    private static boolean covers(Finding finding, Finding other) {
        return parts(other).containsAll(parts(finding));
    }

    private static Set<String> parts(Finding finding) {
        return new HashSet<>(Arrays.asList(finding.reading().split(", ", -1)));
    }

    private static Set<String> device(Finding finding) {
        Set<String> device = parts(finding);
        device.removeIf(part -> !part.startsWith("device="));
        return device;
    }

    /** A take of the other ear is no tube that moved, nor music that differs; another take may still be either. */
    private boolean isOfTake(Finding finding) {
        boolean aboutTakes = finding.check().equals(new ReturnCheck().name())
                || finding.check().equals(new MusicRepeat().name());
        return aboutTakes
                && has(
                        finding.session(),
                        f -> f.remark().key().equals(SwappedTakes.KEY)
                                && f.consequence() == Consequence.UNUSABLE
                                && ear(f).equals(ear(finding))
                                && take(f).equals(take(finding)));
    }

    /** A product that howls limits its own readings of the same state, setting above all, in the bands of the howl. */
    private boolean isOfHowl(Finding finding) {
        return finding.remark().key().equals(OwnNoise.LIMITED)
                && has(
                        finding.session(),
                        f -> f.check().equals(new FeedbackTone().name())
                                && f.consequence() == Consequence.UNUSABLE
                                && f.bands().containsAll(finding.bands())
                                && state(f).equals(state(finding)));
    }

    /** What a product was while it was read: all but the sound and which of the repeats. */
    private static Set<String> state(Finding finding) {
        Set<String> state = parts(finding);
        state.removeIf(part -> OF_READING.stream().anyMatch(part::startsWith));
        return state;
    }

    /** Beside an insertion whose tube is blocked, which seems to take most off, the others seem to leak; not beside one that is sound. */
    private boolean isOfTube(Finding finding) {
        List<Set<String>> better = SlitLeak.better(finding).stream()
                .map(reading -> Set.of(reading.split(", ", -1)))
                .toList();
        return !better.isEmpty() && better.stream().allMatch(one -> isBlocked(finding.session(), one));
    }

    private boolean isBlocked(String session, Set<String> insertion) {
        return has(
                session,
                f -> BLOCKED.contains(f.check())
                        && f.consequence() == Consequence.UNUSABLE
                        && parts(f).containsAll(insertion));
    }

    /** Which of the takes; where readings are told apart by insertions, that. Some findings tell it as a figure alone. */
    private static Set<String> take(Finding finding) {
        Set<String> take = new HashSet<>();
        parts(finding).stream()
                .filter(part -> part.startsWith("take=") || part.startsWith("insertion="))
                .forEach(part -> take.add(part.substring(part.indexOf('=') + 1)));
        finding.remark().figures().entrySet().stream()
                .filter(figure -> figure.getKey().equals("take"))
                .forEach(figure -> take.add(String.valueOf(figure.getValue())));
        return take;
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
