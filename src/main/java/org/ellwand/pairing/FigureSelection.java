package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import org.ellwand.claim.Between;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Figure;
import org.ellwand.measurement.Session;

/** From a rule to the single figures it speaks of, in groups that are equal in every condition but insertion and take. */
public final class FigureSelection {
    private final String product;
    private final List<Session> sessions;

    /**
     * The figures of one product.
     *
     * @param product its name, as figures name their device
     * @param sessions all that may hold figures of it
     */
    public FigureSelection(String product, List<Session> sessions) {
        this.product = product;
        this.sessions = List.copyOf(sessions);
    }

    /**
     * {@return the groups of a rule, in order of their conditions}
     *
     * @param rule about a figure
     * @throws InputException where figures of several settings, fits, firmwares, ears or units match and the rule says
     *     nothing of it
     */
    public Map<Conditions, List<Figure>> select(Rule rule) throws InputException {
        return select(rule, Filter.of(rule, product));
    }

    /**
     * {@return the groups of the first (or the second) value of a comparison}
     *
     * @param rule about a figure, with {@code between}
     * @param first whether the first value is meant, not the second
     * @throws InputException as {@link #select}
     */
    public Map<Conditions, List<Figure>> side(Rule rule, boolean first) throws InputException {
        Between between = rule.between().orElseThrow();
        String value = first ? between.first() : between.second();
        Filter filter =
                Filter.of(rule, product).with(between.condition(), value, PairSelection.level(rule, between, value));
        return between.isOfSounds()
                ? select(rule, filter, (session, figure) -> filter.meetsStimulus(session.stimulusOf(figure)))
                : select(rule, filter);
    }

    /**
     * {@return every figure that enters a rule, of both values where it compares two}
     *
     * @param rule about a figure
     * @throws InputException as {@link #select}
     */
    public List<Figure> all(Rule rule) throws InputException {
        List<Figure> all = new ArrayList<>();
        if (rule.between().isPresent()) {
            side(rule, true).values().forEach(all::addAll);
            side(rule, false).values().forEach(all::addAll);
        } else {
            select(rule).values().forEach(all::addAll);
        }
        return all;
    }

    private Map<Conditions, List<Figure>> select(Rule rule, Filter filter) throws InputException {
        return select(rule, filter, (session, figure) -> true);
    }

    private Map<Conditions, List<Figure>> select(Rule rule, Filter filter, BiPredicate<Session, Conditions> underSound)
            throws InputException {
        Map<String, List<Figure>> groups = new TreeMap<>();
        List<Conditions> matched = new ArrayList<>();
        for (Session session : sessions) {
            for (Figure figure : session.figures()) {
                if (rule.of().equals(Optional.of(figure.of()))
                        && filter.meetsDevice(figure.conditions())
                        && filter.meetsNames(figure.conditions())
                        && underSound.test(session, figure.conditions())) {
                    Conditions key = figure.conditions().without(Set.of("insertion", "take"));
                    matched.add(key);
                    groups.computeIfAbsent(key.toString(), k -> new ArrayList<>())
                            .add(figure);
                }
            }
        }
        Unsaid.refuse(rule, matched);
        Map<Conditions, List<Figure>> found = new LinkedHashMap<>();
        groups.values().forEach(g -> found.put(g.get(0).conditions().without(Set.of("insertion", "take")), g));
        return found;
    }
}
