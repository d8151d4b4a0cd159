package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.ellwand.amount.Amount;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.words.Remark;

/** Finds the open ear, and the field microphone, that belong to a reading in place. */
public final class OpenEars {
    private OpenEars() {}

    /**
     * An open ear.
     *
     * @param takes at least one
     * @param shiftDb to be added to its levels
     * @param note says so, where it was shifted
     */
    public record Partner(List<Reading> takes, List<Reading> field, double shiftDb, Optional<Remark> note) {}

    /** The open ear under the same sound, or, where the session says so, under the same kind of sound and shifted. */
    public static Optional<Partner> of(Session session, Reading inPlace) {
        List<Reading> ears = readings(session)
                .filter(r -> r.isOpenEar() && sameEar(session, r, inPlace))
                .toList();
        String stimulus = inPlace.get("stimulus").orElse("");
        List<Reading> same = under(ears, stimulus);
        if (!same.isEmpty()) {
            return Optional.of(new Partner(same, field(session, same.get(0)), 0, Optional.empty()));
        }
        return session.openEarScaled() ? scaled(session, ears, inPlace) : Optional.empty();
    }

    private static Stream<Reading> readings(Session session) {
        return session.readings().stream().map(r -> r);
    }

    static List<Reading> field(Session session, Reading like) {
        return readings(session)
                .filter(r -> r.isFieldMicrophone()
                        && r.get("stimulus").equals(like.get("stimulus"))
                        && sameDeclared(session, r, like)
                        && compatible(r, like))
                .toList();
    }

    private static boolean compatible(Reading field, Reading like) {
        return List.of("head", "ear", "side").stream()
                .allMatch(name -> field.get(name).isEmpty() || field.get(name).equals(like.get(name)));
    }

    private static boolean sameEar(Session session, Reading open, Reading inPlace) {
        return List.of("head", "ear", "side").stream()
                        .allMatch(name -> open.get(name).equals(inPlace.get(name)))
                && sameDeclared(session, open, inPlace);
    }

    /** A declared condition (a direction, say) belongs to the open ear too where the open ear names it. */
    private static boolean sameDeclared(Session session, Reading open, Reading inPlace) {
        return session.declaredConditions().stream()
                .allMatch(name -> open.get(name).isEmpty() || open.get(name).equals(inPlace.get(name)));
    }

    private static List<Reading> under(List<Reading> ears, String stimulus) {
        return ears.stream()
                .filter(r -> r.get("stimulus").orElse("").equals(stimulus))
                .toList();
    }

    /** The open ear is a linear path: nearest other level of the same kind, shifted by the difference of the levels. */
    private static Optional<Partner> scaled(Session session, List<Reading> ears, Reading inPlace) {
        Optional<Stimulus> wanted = session.stimulusOf(inPlace.conditions());
        if (wanted.isEmpty() || wanted.get().isQuiet()) {
            return Optional.empty();
        }
        List<Partner> partners = new ArrayList<>();
        ears.stream()
                .map(r -> r.get("stimulus").orElse(""))
                .distinct()
                .sorted()
                .forEach(id -> shifted(session, under(ears, id), wanted.get()).ifPresent(partners::add));
        return partners.stream().min(Comparator.comparingDouble(p -> Math.abs(p.shiftDb())));
    }

    private static Optional<Partner> shifted(Session session, List<Reading> takes, Stimulus wanted) {
        Optional<Stimulus> measured = session.stimulusOf(takes.get(0).conditions());
        if (measured.isEmpty() || !measured.get().kind().equals(wanted.kind())) {
            return Optional.empty();
        }
        for (Amount level : wanted.levels()) {
            Optional<Double> other = measured.get().levelIn(level.unit());
            if (other.isPresent()) {
                double shift = level.value() - other.get();
                return Optional.of(new Partner(
                        takes, field(session, takes.get(0)), shift, Optional.of(note(session, measured.get(), shift))));
            }
        }
        return Optional.empty();
    }

    private static Remark note(Session session, Stimulus measured, double shiftDb) {
        return Remark.of("scaled-open-ear")
                .with("stimulus", measured.id())
                .with("shift", String.format(Locale.ROOT, "%+.1f", shiftDb))
                .with("session", session.id());
    }
}
