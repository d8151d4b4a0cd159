package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/** From a rule to the cells it speaks of. */
public final class Selection {
    private static final Set<String> REPEATS = Set.of("insertion", "take");
    private static final Set<String> VALUES = Set.of("values");
    private static final Set<String> SCOPE =
            Set.of("session", "head", "ear", "side", "unit", "fit", "device", "insertion");
    private static final Set<String> SCOPE_WITH_SETTING =
            Set.of("session", "head", "ear", "side", "unit", "fit", "device", "insertion", "setting");

    private final String product;
    private final List<Session> sessions;
    private final Need need;

    /**
     * What a quantity needs of the readings.
     *
     * @param source where the readings in place come from
     * @param openEar whether a cell without an open ear is of no use
     * @param joining which cells one number is computed from together
     */
    public record Need(Source source, boolean openEar, Joining joining) {}

    /**
     * The cells of one product.
     *
     * @param product its name, as readings name their device
     * @param sessions all that may hold readings of it
     * @param need what the quantity needs of them
     */
    public Selection(String product, List<Session> sessions, Need need) {
        this.product = product;
        this.sessions = List.copyOf(sessions);
        this.need = need;
    }

    /**
     * The cells of a rule without {@code between}, or of one side of it, joined as the quantity needs them.
     *
     * @param rule any rule about readings
     * @return the cells, and what could not be used
     * @throws InputException where readings of several settings, fits, firmwares, ears or units match and the rule says
     *     nothing of it
     */
    public Selected select(Rule rule) throws InputException {
        return select(rule, Filter.of(rule, product));
    }

    Selected select(Rule rule, Filter filter) throws InputException {
        SortedSet<Remark> dropped = new TreeSet<>();
        List<Joined> joined = switch (need.joining()) {
            case ALONE ->
                cells(rule, filter, need.openEar(), dropped).stream()
                        .map(Joined::alone)
                        .toList();
            case LEVELS -> Joiner.levels(cells(rule, filter, need.openEar(), dropped));
            case QUIET_AND_LOWEST ->
                Joiner.quietAndLowest(
                        cells(rule, filter.quiet(), false, dropped),
                        cells(rule, filter.sounding(), need.openEar(), dropped),
                        dropped);
        };
        return new Selected(joined, List.copyOf(dropped));
    }

    private List<Cell> cells(Rule rule, Filter filter, boolean openEar, Set<Remark> dropped) throws InputException {
        List<Cell> cells = new ArrayList<>();
        List<Conditions> matched = new ArrayList<>();
        for (Session session : sessions) {
            Map<Conditions, List<Reading>> groups = group(session, filter, dropped);
            groups.values().forEach(g -> matched.add(g.get(0).conditions()));
            OpenEars ears = OpenEars.in(session);
            for (Map.Entry<Conditions, List<Reading>> group : groups.entrySet()) {
                cell(session, ears, group.getKey(), group.getValue(), openEar, dropped)
                        .ifPresent(cells::add);
            }
        }
        Unsaid.refuse(rule, matched);
        return cells.stream()
                .map(cell -> Map.entry(cell.conditions().toString(), cell))
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .toList();
    }

    private Map<Conditions, List<Reading>> group(Session session, Filter filter, Set<Remark> dropped) {
        Map<Conditions, List<Reading>> groups = new LinkedHashMap<>();
        need.source().collect(session, c -> filter.meets(session, c), reading -> add(reading, groups), dropped::add);
        return groups;
    }

    private static void add(Reading reading, Map<Conditions, List<Reading>> groups) {
        Conditions key = reading.conditions()
                .without(REPEATS)
                .with("values", reading.values().name());
        groups.computeIfAbsent(key, k -> new ArrayList<>()).add(reading);
    }

    private static Optional<Cell> cell(
            Session session,
            OpenEars ears,
            Conditions key,
            List<Reading> readings,
            boolean needsOpenEar,
            Set<Remark> dropped) {
        Reading first = readings.get(0);
        Optional<OpenEars.Partner> partner = ears.of(first);
        boolean differences = first.values() != Reading.Values.LEVELS;
        if (needsOpenEar && !differences && partner.isEmpty()) {
            dropped.add(Remark.of("no-open-ear").with("session", session.id()));
            return Optional.empty();
        }
        List<Remark> notes = new ArrayList<>();
        if (needsOpenEar && !differences) {
            partner.flatMap(OpenEars.Partner::note).ifPresent(notes::add);
        }
        return Optional.of(new Cell(
                session,
                key.without(VALUES),
                insertions(session, readings),
                first.values(),
                partner.map(OpenEars.Partner::takes).orElse(List.of()),
                partner.map(OpenEars.Partner::field).orElse(List.of()),
                partner.map(OpenEars.Partner::shiftDb).orElse(0.0),
                notes));
    }

    private static List<Insertion> insertions(Session session, List<Reading> readings) {
        SortedMap<String, List<Reading>> byKey = new TreeMap<>();
        for (Reading reading : readings) {
            byKey.computeIfAbsent(insertionKey(session, reading), k -> new ArrayList<>(1))
                    .add(reading);
        }
        List<Insertion> insertions = new ArrayList<>(byKey.size());
        byKey.forEach(
                (key, takes) -> insertions.add(new Insertion(key, takes.get(0).get("insertion"), takes)));
        return insertions;
    }

    /** Ids hold within session, ear, side, unit and fit (and product); a reading without one is its own insertion. */
    private static String insertionKey(Session session, Reading reading) {
        if (reading.get("insertion").isEmpty()) {
            return reading.conditions().toString();
        }
        Set<String> scope = session.settingsSwitchedInPlace() ? SCOPE : SCOPE_WITH_SETTING;
        return reading.conditions().only(scope).toString();
    }
}
