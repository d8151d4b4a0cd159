package org.ellwand.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Statements about people and products, and steady traces: what a plan promises, followed by sittings whose true mean and scatter
 * are those seen so far. {@value #SITTINGS} of each, so that three standard deviations of a share near 0.8 are 0.06.
 */
class FollowedPlanTest {
    private static final int SITTINGS = 400;
    private static final double NOISE = 0.06;
    private static final double OPEN_DB = 70;
    private static final double OPEN_READING_DB = 0.3;

    @TempDir
    Path temp;

    private static final double[] MEASURED_DB = {14.6, 16.9, 15.4, 18.1};

    private List<Product> claimed(String rule) throws Exception {
        Files.createDirectories(temp.resolve("claims"));
        Files.writeString(temp.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims:
                  - id: flood
                    edition: box
                    quote: "As the box says."
                """ + "    stated: " + rule + "\n");
        return new ClaimsReader(Quantities.forms(), Set.of()).readAll(temp);
    }

    private static String ofAll(String whom) {
        return "{quantity: attenuation, setting: flood, limit: at least 15 dB, level: 94 dB SPL, bands: 125 Hz to 8 kHz,"
                + " statistic: mean, " + whom + ": mean}";
    }

    private static Audit audit(List<Product> products, Session session) throws Exception {
        return new Auditor(new AuditOptions(10_000)).audit(products, List.of(session), List.of());
    }

    private static Outlook planned(List<Product> products, Session measured) throws Exception {
        return Plan.of(audit(products, measured)).get(0).outlooks().get(0);
    }

    /** How many of the sittings decide. */
    private static double decided(List<Product> products, IntFunction<Session> sittings) throws Exception {
        int firm = 0;
        for (int i = 0; i < SITTINGS; i++) {
            Verdict verdict = audit(products, sittings.apply(i))
                    .products()
                    .get(0)
                    .claims()
                    .get(0)
                    .verdict();
            firm += verdict == Verdict.PASS || verdict == Verdict.FAIL ? 1 : 0;
        }
        return (double) firm / SITTINGS;
    }

    private static double[] drawn(NormalStream draw, double[] like, int many) {
        double mean = Arrays.stream(like).average().orElseThrow();
        double squares = Arrays.stream(like).map(v -> (v - mean) * (v - mean)).sum();
        double deviation = Math.sqrt(squares / (like.length - 1));
        return IntStream.range(0, many)
                .mapToDouble(i -> mean + deviation * draw.next())
                .toArray();
    }

    private static double[] joined(double[] first, double[] then) {
        return DoubleStream.concat(Arrays.stream(first), Arrays.stream(then)).toArray();
    }

    private static MadeSession yard() {
        return new MadeSession("yard")
                .cause("insertion", 1, SharedBy.INSERTION)
                .cause("reading", OPEN_READING_DB, SharedBy.READING)
                .pink(94);
    }

    /** A head for each attenuation, one ear of each. */
    private static Session heads(double[] attenuationsDb) {
        MadeSession made = yard();
        for (int i = 0; i < attenuationsDb.length; i++) {
            double attenuation = attenuationsDb[i];
            String who = "head=crew-" + i + ", ear=crew-" + i + "-left, stimulus=pink-94, ";
            made.reading("device=open ear, " + who + "take=1", f -> OPEN_DB);
            made.reading("device=Skerry, setting=flood, insertion=1, " + who + "take=1", f -> OPEN_DB - attenuation);
        }
        return made.session();
    }

    /** A sample for each attenuation, all in one ear, whose open readings err in every band by themselves. */
    private static Session samples(double[] attenuationsDb, NormalStream draw) {
        MadeSession made = yard();
        String sound = "stimulus=pink-94, ";
        made.reading("device=open ear, " + sound + "take=1", f -> OPEN_DB + OPEN_READING_DB * draw.next());
        for (int i = 0; i < attenuationsDb.length; i++) {
            double attenuation = attenuationsDb[i];
            made.reading(
                    "device=Skerry, setting=flood, insertion=" + (i + 1) + ", " + sound + "unit=BW-" + i,
                    f -> OPEN_DB - attenuation);
        }
        return made.session();
    }

    /** A steady tone for each drift, read anew. */
    private static Session traces(double[] driftsDb) {
        MadeSession made = new MadeSession("yard").sound("tone-94", "tone", 94);
        double[] times = IntStream.range(0, 20).mapToDouble(i -> i).toArray();
        for (int i = 0; i < driftsDb.length; i++) {
            double drift = driftsDb[i];
            double[] levels = Arrays.stream(times)
                    .map(t -> 60 + drift * (t < 4 ? 0 : t < 16 ? 0.5 : 1))
                    .toArray();
            made.trace("device=Skerry, stimulus=tone-94, insertion=" + (i + 1), List.of(), times, levels);
        }
        return made.session();
    }

    @Test
    void theChanceOfMoreHeadsIsKept() throws Exception {
        List<Product> products = claimed(ofAll("ears"));
        Outlook outlook = planned(products, heads(MEASURED_DB));
        assertThat(outlook.advice()).isEqualTo(Outlook.Advice.HEADS);
        double chance = outlook.chance().orElseThrow();
        NormalStream draw = new NormalStream(Seeds.of("plan", "heads"));
        assertThat(decided(products, i -> heads(drawn(draw, MEASURED_DB, outlook.wearers()))))
                .isCloseTo(chance, within(NOISE));
        // Those measured stay, and their mean is the true one: the mean of all scatters less.
        int more = outlook.wearers() - MEASURED_DB.length;
        assertThat(decided(products, i -> heads(joined(MEASURED_DB, drawn(draw, MEASURED_DB, more)))))
                .isGreaterThan(chance);
    }

    @Test
    void theChanceOfMoreSamplesIsKept() throws Exception {
        List<Product> products = claimed(ofAll("units"));
        NormalStream draw = new NormalStream(Seeds.of("plan", "samples"));
        Outlook outlook = planned(products, samples(MEASURED_DB, new NormalStream(Seeds.of("plan", "first"))));
        assertThat(outlook.advice()).isEqualTo(Outlook.Advice.SAMPLES);
        assertThat(decided(products, i -> samples(drawn(draw, MEASURED_DB, outlook.wearers()), draw)))
                .isCloseTo(outlook.chance().orElseThrow(), within(NOISE));
    }

    /** By the factor of a one-sided tolerance interval, mean and scatter both drawn anew. */
    @Test
    void theChanceOfAShareIsKept() throws Exception {
        List<Product> products = claimed(ofAll("ears").replace("ears: mean", "ears: share of 75 %"));
        double[] measured = {15.9, 17.9, 16.4, 18.6};
        Outlook outlook = planned(products, heads(measured));
        assertThat(outlook.advice()).isEqualTo(Outlook.Advice.HEADS);
        NormalStream draw = new NormalStream(Seeds.of("plan", "share"));
        assertThat(decided(products, i -> heads(drawn(draw, measured, outlook.wearers()))))
                .isCloseTo(outlook.chance().orElseThrow(), within(NOISE));
    }

    /** Of the few traces that are planned, one scatter in ten is less than half the true one: with a normal the promise would be too high. */
    @Test
    void theChanceOfMoreTracesIsKept() throws Exception {
        List<Product> products =
                claimed("{quantity: level drift, stimulus: tone, level: 94 dB SPL, limit: at most 0.5 dB}");
        double[] measured = {0.30, 0.45, 0.13};
        Outlook outlook = planned(products, traces(measured));
        assertThat(outlook.advice()).isEqualTo(Outlook.Advice.TRACES);
        NormalStream draw = new NormalStream(Seeds.of("plan", "traces"));
        assertThat(outlook.insertions()).isLessThan(8);
        assertThat(decided(products, i -> traces(drawn(draw, measured, outlook.insertions()))))
                .isCloseTo(outlook.chance().orElseThrow(), within(NOISE));
    }
}
