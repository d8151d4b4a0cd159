package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;

/** From a rule to the subjects whose attenuation at the hearing threshold it speaks of. */
public final class PanelSelection {
    private final String product;
    private final List<Session> sessions;

    /**
     * The panels of one product.
     *
     * @param product its name, as readings name their device
     * @param sessions all that may hold readings of it
     */
    public PanelSelection(String product, List<Session> sessions) {
        this.product = product;
        this.sessions = List.copyOf(sessions);
    }

    /**
     * The trials of each subject, by its name: the head, else the ear, else the session.
     *
     * @param rule of a rating
     * @return one curve or more for each subject, attenuation in dB
     * @throws InputException where trials of several settings, fits or firmwares match and the rule says nothing of it
     */
    public SortedMap<String, List<CurveReading>> select(Rule rule) throws InputException {
        Filter filter = Filter.of(rule, product);
        SortedMap<String, List<CurveReading>> subjects = new TreeMap<>();
        List<Conditions> matched = new ArrayList<>();
        for (CurveReading reading : of(Reading.Values.SUBJECT_ATTENUATION)) {
            if (filter.meetsNames(reading.conditions())) {
                matched.add(reading.conditions());
                subjects.computeIfAbsent(subject(reading), k -> new ArrayList<>())
                        .add(reading);
            }
        }
        Unsaid.refuseNames(rule, matched);
        return subjects;
    }

    private static String subject(CurveReading reading) {
        return reading.get("head")
                .or(() -> reading.get("ear"))
                .or(() -> reading.get("session"))
                .orElse("");
    }

    /**
     * {@return whether the product has curves, and none of them is the attenuation of a subject at the hearing
     * threshold}
     */
    public boolean hasOtherCurvesOnly() {
        return of(Reading.Values.SUBJECT_ATTENUATION).isEmpty()
                && sessions.stream()
                        .flatMap(s -> s.readings().stream())
                        .anyMatch(r -> r.device().equals(product));
    }

    private List<CurveReading> of(Reading.Values values) {
        return sessions.stream()
                .flatMap(s -> s.readings().stream())
                .filter(r -> r.device().equals(product) && r.values() == values)
                .toList();
    }
}
