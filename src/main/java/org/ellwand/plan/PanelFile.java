package org.ellwand.plan;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ellwand.claim.Rule;
import org.ellwand.quantity.RatingMethod;

/**
 * The attenuation of each subject of a panel at the hearing threshold, as a session file with an empty sheet: what a rating is
 * computed from that comes with no table of the maker's. Each method has its file, because its frequencies are its own.
 */
final class PanelFile {
    /** By ISO 4869-1 (from memory). */
    private static final int SUBJECTS = 16;

    /** By ANSI S3.19, which 40 CFR 211.206 refers to (from memory). */
    private static final int SUBJECTS_OF_CFR = 10;

    private static final int TRIALS_OF_CFR = 3;

    private PanelFile() {}

    /** The files by name; none where no rating is open. */
    static SortedMap<String, String> files(Plan plan) {
        SortedMap<String, String> files = new TreeMap<>();
        for (Outlook outlook : plan.outlooks()) {
            if (outlook.advice() == Outlook.Advice.OTHER) {
                outlook.audited()
                        .claim()
                        .rule()
                        .filter(rule -> rule.quantity().equals("rating"))
                        .ifPresent(rule -> add(files, plan, rule));
            }
        }
        return files;
    }

    private static void add(SortedMap<String, String> files, Plan plan, Rule rule) {
        String product = plan.product().product().name();
        RatingMethod method = RatingMethod.of(rule);
        for (SortedMap<String, String> conditions : Wanted.combinations(rule, product, plan.worn())) {
            String id = "plan-"
                    + Text.slug(product + " panel " + method.text() + " " + String.join(" ", conditions.values()));
            files.put(id + ".yaml", yaml(id, product, method, conditions));
            files.put(id + ".csv", sheet(method));
        }
    }

    private static String yaml(String id, String product, RatingMethod method, SortedMap<String, String> conditions) {
        String resolution = method == RatingMethod.CFR ? "third-octave" : "octave";
        String said = conditions.entrySet().stream()
                .map(one -> ", " + one.getKey() + ": " + Text.quoted(one.getValue()))
                .collect(Collectors.joining());
        return String.join(
                "\n",
                List.of(
                        "# By the standard procedure, in a qualified laboratory: attenuation at the hearing threshold.",
                        "session: " + Text.quoted(id),
                        "product: " + Text.quoted(product),
                        "resolution: " + resolution,
                        "uncertainty: unknown           # a panel tells its own scatter",
                        "data:",
                        "  - {file: " + Text.quoted(id + ".csv") + ", layout: attenuation" + said + "}",
                        ""));
    }

    private static String sheet(RatingMethod method) {
        boolean cfr = method == RatingMethod.CFR;
        StringBuilder sheet = new StringBuilder("head,insertion,frequency (Hz),attenuation (dB)\n");
        for (int subject = 1; subject <= (cfr ? SUBJECTS_OF_CFR : SUBJECTS); subject++) {
            for (int trial = 1; trial <= (cfr ? TRIALS_OF_CFR : 1); trial++) {
                for (int hz : method.frequenciesHz()) {
                    sheet.append("subject-" + (subject < 10 ? "0" : "") + subject + "," + trial + "," + hz + ",\n");
                }
            }
        }
        return sheet.toString();
    }
}
