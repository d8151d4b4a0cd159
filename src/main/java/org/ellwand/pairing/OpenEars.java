package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.ellwand.amount.Amount;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.words.Remark;

/**
 * Finds the open ear, and the field microphone, that belong to a reading in place. A session's are gathered once, by their
 * wearer: of a lot there are many readings in place and few open ears.
 */
public final class OpenEars {
    private static final List<String> WEARER = List.of("head", "ear", "side");
    /** What an open ear is not chosen by. */
    private static final Set<String> OF_THE_PRODUCT =
            Set.of("session", "device", "setting", "fit", "firmware", "unit", "insertion", "take");

    private final Session session;
    private final Map<List<Optional<String>>, List<Reading>> ears = new HashMap<>();
    private final List<Reading> fields = new ArrayList<>();
    private final Set<String> notAsked;
    private final Map<Conditions, Optional<Partner>> partners = new ConcurrentHashMap<>();

    private OpenEars(Session session) {
        this.session = session;
        Set<String> product = new HashSet<>(OF_THE_PRODUCT);
        product.removeAll(session.declaredConditions());
        notAsked = Set.copyOf(product);
        for (Reading reading : session.readings()) {
            if (reading.isOpenEar()) {
                ears.computeIfAbsent(wearer(reading), k -> new ArrayList<>()).add(reading);
            } else if (reading.isFieldMicrophone()) {
                fields.add(reading);
            }
        }
    }

    /**
     * {@return the open ears and field microphones of a session}
     *
     * @param session with readings of both kinds
     */
    public static OpenEars in(Session session) {
        return new OpenEars(session);
    }

    private static List<Optional<String>> wearer(Reading reading) {
        return WEARER.stream().map(reading::get).toList();
    }

    /**
     * An open ear.
     *
     * @param takes at least one
     * @param field takes of the field microphone under the same sound; empty where there are none
     * @param shiftDb to be added to its levels
     * @param note says so, where it was shifted
     */
    public record Partner(List<Reading> takes, List<Reading> field, double shiftDb, Optional<Remark> note) {}

    /**
     * {@return the open ear that belongs to a reading; empty where none does} Readings that differ in nothing that
     * matters here have the same one.
     *
     * @param inPlace a reading with a product in place
     */
    public Optional<Partner> of(Reading inPlace) {
        Conditions asked = inPlace.conditions().without(notAsked);
        Optional<Partner> known = partners.get(asked);
        return known != null ? known : partners.computeIfAbsent(asked, k -> found(inPlace));
    }

    /** The open ear under the same sound, or, where the session says so, under the same kind of sound and shifted. */
    private Optional<Partner> found(Reading inPlace) {
        List<Reading> own = ears.getOrDefault(wearer(inPlace), List.of()).stream()
                .filter(open -> sameDeclared(open, inPlace))
                .toList();
        String stimulus = inPlace.get("stimulus").orElse("");
        List<Reading> same = under(own, stimulus);
        if (!same.isEmpty()) {
            return Optional.of(new Partner(same, field(same.get(0)), 0, Optional.empty()));
        }
        return session.openEarScaled() ? scaled(own, inPlace) : Optional.empty();
    }

    private List<Reading> field(Reading like) {
        return fields.stream()
                .filter(r ->
                        r.get("stimulus").equals(like.get("stimulus")) && sameDeclared(r, like) && compatible(r, like))
                .toList();
    }

    private static boolean compatible(Reading field, Reading like) {
        return WEARER.stream()
                .allMatch(name -> field.get(name).isEmpty() || field.get(name).equals(like.get(name)));
    }

    /** A declared condition (a direction, say) belongs to the open ear too where the open ear names it. */
    private boolean sameDeclared(Reading open, Reading inPlace) {
        return session.declaredConditions().stream()
                .allMatch(name -> open.get(name).isEmpty() || open.get(name).equals(inPlace.get(name)));
    }

    private static List<Reading> under(List<Reading> ears, String stimulus) {
        return ears.stream()
                .filter(r -> r.get("stimulus").orElse("").equals(stimulus))
                .toList();
    }

    /** The open ear is a linear path: nearest other level of the same kind, shifted by the difference of the levels. */
    private Optional<Partner> scaled(List<Reading> own, Reading inPlace) {
        Optional<Stimulus> wanted = session.stimulusOf(inPlace.conditions());
        if (wanted.isEmpty() || wanted.get().isQuiet()) {
            return Optional.empty();
        }
        List<Partner> partners = new ArrayList<>();
        own.stream()
                .map(r -> r.get("stimulus").orElse(""))
                .distinct()
                .sorted()
                .forEach(id -> shifted(under(own, id), wanted.get()).ifPresent(partners::add));
        return partners.stream().min(Comparator.comparingDouble(p -> Math.abs(p.shiftDb())));
    }

    private Optional<Partner> shifted(List<Reading> takes, Stimulus wanted) {
        Optional<Stimulus> measured = session.stimulusOf(takes.get(0).conditions());
        if (measured.isEmpty() || !measured.get().kind().equals(wanted.kind())) {
            return Optional.empty();
        }
        for (Amount level : wanted.levels()) {
            Optional<Double> other = measured.get().levelIn(level.unit());
            if (other.isPresent()) {
                double shift = level.value() - other.get();
                return Optional.of(
                        new Partner(takes, field(takes.get(0)), shift, Optional.of(note(measured.get(), shift))));
            }
        }
        return Optional.empty();
    }

    private Remark note(Stimulus measured, double shiftDb) {
        return Remark.of("scaled-open-ear")
                .with("stimulus", measured.id())
                .with("shift", String.format(Locale.ROOT, "%+.1f", shiftDb))
                .with("session", session.id());
    }
}
