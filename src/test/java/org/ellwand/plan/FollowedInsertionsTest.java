package org.ellwand.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.audit.Verdict;
import org.ellwand.check.MadeSession;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Quantities;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * More insertions in one ear, by curves of 21 bands no two of which are alike, as instruments write them: what a plan promises, followed by
 * sittings whose true mean and scatter are those seen so far. {@value #SITTINGS} of each, so that three standard deviations of a share near
 * one half are 0.06. All is invented.
 */
class FollowedInsertionsTest {
    private static final int SITTINGS = 600;
    private static final double NOISE = 0.06;
    private static final double READING_DB = 0.3;

    @TempDir
    Path temp;

    private List<Product> claimed(String rule) throws Exception {
        Files.createDirectories(temp.resolve("claims"));
        Files.writeString(temp.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims:
                  - id: flood
                    edition: box
                    quote: "As the box says."
                    stated: {quantity: attenuation, setting: flood, level: 94 dB SPL, bands: 125 Hz to 8 kHz, %s}
                """.formatted(rule));
        return new ClaimsReader(Quantities.forms(), Set.of()).readAll(temp);
    }

    private static Verdict verdict(Audit audit) {
        return audit.products().get(0).claims().get(0).verdict();
    }

    private static Audit audit(List<Product> products, Session session) throws Exception {
        return new Auditor(new AuditOptions(10_000)).audit(products, List.of(session), List.of());
    }

    private static double openDb(double hz) {
        return 80 + 12 * Math.exp(-Math.pow(Math.log(hz / 2700) / 0.4, 2));
    }

    /**
     * A sitting with an insertion for each deviation, which moves all bands alike.
     *
     * @param attenuationDb the true one by frequency
     * @param declaredDb of insertions; 0 where nothing is declared of them
     */
    private static Session sitting(
            DoubleUnaryOperator attenuationDb, double[] deviationsDb, double declaredDb, DoubleSupplier readingDb) {
        MadeSession made = new MadeSession("yard")
                .cause("reading", READING_DB, SharedBy.READING)
                .pink(94);
        if (declaredDb > 0) {
            made.cause("insertion", declaredDb, SharedBy.INSERTION);
        }
        for (int take = 1; take <= 2; take++) {
            made.reading("device=open ear, stimulus=pink-94, take=" + take, f -> openDb(f) + readingDb.getAsDouble());
        }
        for (int i = 0; i < deviationsDb.length; i++) {
            double deviation = deviationsDb[i];
            made.reading(
                    "device=Skerry, setting=flood, stimulus=pink-94, insertion=" + (i + 1),
                    f -> openDb(f) - attenuationDb.applyAsDouble(f) - deviation + readingDb.getAsDouble());
        }
        return made.session();
    }

    /** Readings that hit the true levels but for what no two readings agree to. */
    private static DoubleSupplier nearlyNothing() {
        NormalStream draw = new NormalStream(Seeds.of("plan", "readings"));
        return () -> 1e-3 * draw.next();
    }

    /** How many of the sittings that are planned decide. */
    private static double decided(
            List<Product> products,
            Outlook outlook,
            DoubleUnaryOperator attenuationDb,
            double deviationDb,
            double declaredDb,
            NormalStream draw)
            throws Exception {
        int firm = 0;
        for (int i = 0; i < SITTINGS; i++) {
            double[] deviations = new double[outlook.insertions()];
            Arrays.setAll(deviations, k -> deviationDb * draw.next());
            Verdict verdict = verdict(
                    audit(products, sitting(attenuationDb, deviations, declaredDb, () -> READING_DB * draw.next())));
            firm += verdict == Verdict.PASS || verdict == Verdict.FAIL ? 1 : 0;
        }
        return (double) firm / SITTINGS;
    }

    private static Outlook planned(List<Product> products, Session measured) throws Exception {
        Audit audit = audit(products, measured);
        assertThat(verdict(audit)).isEqualTo(Verdict.MARGINAL);
        return Plan.of(audit).get(0).outlooks().get(0);
    }

    /** 0.43 dB inside the limit, and insertions that scatter by 1.04 dB: the judge goes by the t of what it sees. */
    @Test
    @Tag("slow")
    void theChanceOfInsertionsWhoseScatterIsSeenIsKept() throws Exception {
        List<Product> products = claimed("statistic: mean, limit: at least 12 dB");
        DoubleUnaryOperator true12 = f -> 12.43;
        double[] measured = {-1.04, 0, 1.04};
        Outlook outlook = planned(products, sitting(true12, measured, 0, nearlyNothing()));
        assertThat(outlook.advice()).isEqualTo(Outlook.Advice.INSERTIONS);
        assertThat(outlook.insertions()).isEqualTo(20);
        assertThat(decided(products, outlook, true12, 1.04, 0, new NormalStream(Seeds.of("plan", "seen sittings"))))
                .isCloseTo(outlook.chance().orElseThrow(), within(NOISE));
    }

    /** One band lies 1.4 dB beyond the limit, the others far inside. */
    @Test
    @Tag("slow")
    void theChanceOfInsertionsWhoseScatterIsDeclaredIsKept() throws Exception {
        List<Product> products = claimed("statistic: every band, limit: at most 15 dB");
        DoubleUnaryOperator oneBand = f -> f > 3000 && f < 3300 ? 16.4 : 10;
        double[] measured = {-1.2, 0, 1.2};
        Outlook outlook = planned(products, sitting(oneBand, measured, 1.2, nearlyNothing()));
        System.out.println("DECL " + outlook.advice() + outlook.insertions() + " " + outlook.chance());
        double d =
                decided(products, outlook, oneBand, 1.2, 1.2, new NormalStream(Seeds.of("plan", "declared sittings")));
        System.out.println("  decided " + d);
    }

    /** What more insertions would come to is made of copies of the one, which are no slip of copying. */
    @Test
    void fromOneInsertionMoreArePlanned() throws Exception {
        List<Product> products = claimed("statistic: mean, limit: at least 12 dB");
        Outlook outlook = planned(products, sitting(f -> 13.4, new double[] {0}, 1.2, nearlyNothing()));
        assertThat(outlook.advice()).isEqualTo(Outlook.Advice.INSERTIONS);
        assertThat(outlook.chance().orElseThrow()).isGreaterThan(0.8);
    }
}
