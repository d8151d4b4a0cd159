package org.ellwand.audit;

import static org.ellwand.audit.PromiseScenario.Known.DECLARED;
import static org.ellwand.audit.PromiseScenario.Known.REPEATS;
import static org.ellwand.audit.PromiseScenario.Pairing.OPEN_EAR;
import static org.ellwand.audit.PromiseScenario.Pairing.SETTINGS;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ellwand.audit.PromiseScenario.Causes;
import org.ellwand.audit.PromiseScenario.Design;
import org.ellwand.claim.Product;

/**
 * How often verdicts are wrong, in every scenario, as a table. The truth lies exactly on the limit, where a claim is as near
 * to both errors as it can be: each pass and each fail counts as a wrong one, and of each at most 5 % are promised.
 *
 * <p>The same arguments give the same bytes: every run is seeded by its scenario and number.
 */
final class Stress {
    private static final int TRIALS = 2000;
    private static final double PROMISED = 0.05;

    /** Ways of measuring; in each, eighteen kinds of claim are tried. */
    private static final List<Design> DESIGNS = List.of(
            new Design(DECLARED, 1, Causes.ALL, OPEN_EAR),
            new Design(DECLARED, 3, Causes.ALL, OPEN_EAR),
            new Design(DECLARED, 2, Causes.INSERTION, OPEN_EAR),
            new Design(DECLARED, 2, Causes.READING, OPEN_EAR),
            new Design(DECLARED, 4, Causes.LARGE, OPEN_EAR),
            new Design(DECLARED, 2, Causes.ALL, SETTINGS),
            new Design(REPEATS, 3, Causes.ALL, OPEN_EAR),
            new Design(REPEATS, 6, Causes.ALL, OPEN_EAR),
            new Design(REPEATS, 4, Causes.READING, OPEN_EAR),
            new Design(REPEATS, 3, Causes.INSERTION, OPEN_EAR),
            new Design(REPEATS, 12, Causes.LARGE, OPEN_EAR),
            new Design(REPEATS, 5, Causes.ALL, SETTINGS));

    private Stress() {}

    private record Row(PromiseScenario scenario, double passes, double fails) {}

    /** @param args runs a scenario, the table's file */
    public static void main(String[] args) throws IOException {
        int runs = Integer.parseInt(args[0]);
        List<PromiseScenario> scenarios =
                DESIGNS.stream().flatMap(d -> PromiseScenario.of(d).stream()).toList();
        List<Row> rows = scenarios.parallelStream().map(s -> row(s, runs)).toList();
        String table = table(rows, runs);
        Files.writeString(Path.of(args[1]), table);
    }

    private static Row row(PromiseScenario scenario, int runs) {
        Product product = scenario.product();
        List<Verdict> verdicts = IntStream.range(0, runs)
                .mapToObj(run -> scenario.verdict(product, run, TRIALS))
                .toList();
        return new Row(scenario, share(verdicts, Verdict.PASS), share(verdicts, Verdict.FAIL));
    }

    private static double share(List<Verdict> verdicts, Verdict verdict) {
        return (double) verdicts.stream().filter(verdict::equals).count() / verdicts.size();
    }

    private static String table(List<Row> rows, int runs) {
        double error = Math.sqrt(PROMISED * (1 - PROMISED) / runs);
        double bound = PROMISED + 3 * error;
        long over = rows.stream()
                .filter(r -> Math.max(r.passes(), r.fails()) > bound)
                .count();
        StringBuilder text = new StringBuilder("""
                # Verdicts whose truth lies on the limit

                Made by `.bench/stress %d`: %d scenarios, %d invented sittings each. On the limit a claim is as near to a false pass
                and to a false fail as it can be; at a confidence of 95 %% at most 5 %% of each are promised. The standard error of
                a share of 5 %% in %d runs is %s; three of them above the promise is %s. Sizes of causes (of session, insertion,
                reading) are standard deviations in dB.

                Shares over three standard errors above the promise: **%d of %d**. Mean share of false passes %s, largest %s; of
                false fails %s, largest %s.

                | claim | known | sizes | insertions | held against | false pass | false fail | promised |
                | --- | --- | --- | --: | --- | --: | --: | --- |
                """.formatted(
                        runs,
                        rows.size(),
                        runs,
                        runs,
                        percent(error),
                        percent(bound),
                        over,
                        2 * rows.size(),
                        percent(mean(rows, Row::passes)),
                        percent(rows.stream().mapToDouble(Row::passes).max().orElse(0)),
                        percent(mean(rows, Row::fails)),
                        percent(rows.stream().mapToDouble(Row::fails).max().orElse(0))));
        rows.forEach(row -> text.append(line(row)));
        text.append(pooled(rows, runs));
        return text.toString();
    }

    /** Every kind of claim over all ways of measuring, where chance has less room. */
    private static String pooled(List<Row> rows, int runs) {
        int sittings = runs * DESIGNS.size();
        StringBuilder text =
                new StringBuilder("""

                ## Every kind of claim over all ways of measuring

                %d sittings each; the standard error of a share of 5 %% is %s.

                | claim | false pass | false fail | promised |
                | --- | --: | --: | --- |
                """.formatted(sittings, percent(Math.sqrt(PROMISED * (1 - PROMISED) / sittings))));
        Map<String, List<Row>> kinds = rows.stream()
                .collect(Collectors.groupingBy(r -> r.scenario().name(), LinkedHashMap::new, Collectors.toList()));
        kinds.forEach((kind, of) -> text.append("| %s | %s | %s | ≤ 5 %% |\n"
                .formatted(kind, percent(mean(of, Row::passes)), percent(mean(of, Row::fails)))));
        return text.toString();
    }

    private static double mean(List<Row> rows, ToDoubleFunction<Row> share) {
        return rows.stream().mapToDouble(share).average().orElse(0);
    }

    private static String line(Row row) {
        PromiseScenario scenario = row.scenario();
        Design design = scenario.design();
        return "| %s | %s | %s | %d | %s | %s | %s | ≤ 5 %% |\n"
                .formatted(
                        scenario.name(),
                        design.known() == DECLARED ? "sizes" : "repeats",
                        design.causes(),
                        design.insertions(),
                        design.pairing() == OPEN_EAR ? "open ear" : "other setting",
                        percent(row.passes()),
                        percent(row.fails()));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }
}
