package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.About;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Two settings that were swapped in every insertion of a session, which nothing in the session itself can tell: the one that takes more off, as the
 * maker's claims have it ({@link ClaimedOrder}), is the louder one under every sound it was read under. It may be the claim that is wrong, so it
 * is noted and voids nothing. Where the session says the order itself ({@code settings weakest first}), that is held against it ({@link
 * SettingOrder}). Compared is the mean level from 125 Hz to 8 kHz; 1 dB at least, and beyond 4.5 standard deviations of the declared
 * errors (common practice, no source). Accuses fewer than 1 in 1000 sound sessions whose settings are as claimed.
 */
final class SwappedThroughout {
    private static final String NAME = "order of settings";
    private static final double LEAST_DB = 1;
    private static final double SCATTER = 4.5 * Math.sqrt(2);
    private static final Set<String> REPEATED = Set.of("setting", "insertion", "take");

    private SwappedThroughout() {}

    static List<Finding> in(Session session, List<Product> products) {
        List<Finding> findings = new ArrayList<>();
        for (Product product : products) {
            List<CurveReading> readings = Sheets.inPlace(session).stream()
                    .filter(reading -> reading.device().equals(product.name()))
                    .toList();
            if (!readings.isEmpty()) {
                ClaimedOrder.of(product).stream()
                        .filter(pair ->
                                !session.chain().weakestFirst().containsAll(List.of(pair.weaker(), pair.stronger())))
                        .forEach(pair -> found(session, product, readings, pair).ifPresent(findings::add));
            }
        }
        return findings;
    }

    private static Optional<Finding> found(
            Session session, Product product, List<CurveReading> readings, ClaimedOrder.Pair pair) {
        List<Double> wrong = new ArrayList<>();
        double threshold = LEAST_DB;
        for (List<CurveReading> alike : Sheets.grouped(readings, REPEATED).values()) {
            LevelCurve louder = Curves.between(
                    Curves.less(Sheets.meanOf(of(alike, pair.stronger())), Sheets.meanOf(of(alike, pair.weaker()))),
                    125,
                    8000);
            if (!louder.isEmpty()) {
                wrong.add(Curves.average(louder));
                threshold = Math.max(threshold, SCATTER * scatterDb(session, louder.bands()));
            }
        }
        double least = wrong.stream().mapToDouble(d -> d).min().orElse(0);
        return least > threshold ? Optional.of(finding(session, product, pair, least, threshold)) : Optional.empty();
    }

    private static List<CurveReading> of(List<CurveReading> readings, String setting) {
        return readings.stream()
                .filter(reading -> reading.get("setting").equals(Optional.of(setting)))
                .toList();
    }

    private static double scatterDb(Session session, List<Band> bands) {
        double reading = Sheets.meanReadingDb(session, bands);
        return session.settingsSwitchedInPlace()
                ? reading
                : Math.hypot(reading, Sheets.meanInsertionDb(session, bands));
    }

    private static Finding finding(
            Session session, Product product, ClaimedOrder.Pair pair, double least, double threshold) {
        return new Finding(
                NAME,
                session.id(),
                Sheets.name(Conditions.of(new TreeMap<>(Map.of("device", product.name())))),
                List.of(),
                Remark.of("settings-against-claims")
                        .with("stronger", pair.stronger())
                        .with("weaker", pair.weaker())
                        .with("wrong", least)
                        .with("threshold", threshold),
                Errs.EITHER,
                Consequence.NOTED,
                Optional.of(new Measure(least, threshold, "dB")),
                About.EVERYTHING);
    }
}
