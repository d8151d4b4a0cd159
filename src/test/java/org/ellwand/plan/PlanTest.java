package org.ellwand.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ellwand.acoustics.Band;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.audit.Verdict;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A claim of an invented earplug that one insertion of three leaves open, and what a plan makes of it. */
class PlanTest {
    private static final double OPEN_DB = 70;
    private static final double ATTENUATION_DB = 16.4;

    @TempDir
    Path temp;

    @BeforeEach
    void write() throws Exception {
        Files.createDirectories(temp.resolve("claims"));
        Files.createDirectories(temp.resolve("measurements"));
        Files.writeString(temp.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims:
                  - id: flood
                    edition: box
                    quote: "Takes 15 dB off."
                    stated: {quantity: attenuation, setting: flood, limit: 15 dB}
                    assumed: {sense: at least, level: 94 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean}
                  - id: loud
                    edition: box
                    quote: "Even at 110 dB."
                    stated: {quantity: attenuation, setting: flood, limit: at least 15 dB, level: 110 dB SPL}
                    assumed: {bands: 125 Hz to 8 kHz, statistic: mean}
                """);
    }

    private void measured(int insertions) throws Exception {
        Files.writeString(temp.resolve("measurements/yard.yaml"), """
                session: yard
                product: Skerry
                ear: crew-01-left
                resolution: octave
                levels in: dB SPL
                stimuli: {pink-75: {kind: pink noise, level: 75 dB SPL}, pink-94: {kind: pink noise, level: 94 dB SPL}}
                open ear: scaled
                settings switched: in place
                uncertainty:
                  - {cause: calibration, size: 0.5 dB, shared by: session}
                  - {cause: insertion, size: 1.5 dB, shared by: insertion}
                  - {cause: seal, size: [{bands: below 450 Hz, size: 0.6 dB}, {bands: above 450 Hz, size: 0.1 dB}], shared by: insertion}
                  - {cause: reading, size: 0.3 dB, shared by: reading, across bands: independent}
                data: [{file: yard.csv, layout: rows}]
                """);
        StringBuilder sheet = new StringBuilder("device,setting,stimulus,insertion,take,frequency,level\n");
        for (int hz : List.of(125, 250, 500, 1000, 2000, 4000, 8000)) {
            sheet.append("open ear,,pink-75,,1,")
                    .append(hz)
                    .append(',')
                    .append(OPEN_DB)
                    .append('\n');
            sheet.append("open ear,,pink-75,,2,")
                    .append(hz)
                    .append(',')
                    .append(OPEN_DB)
                    .append('\n');
            for (int i = 1; i <= insertions; i++) {
                sheet.append(",flood,pink-94,")
                        .append(i)
                        .append(",,")
                        .append(hz)
                        .append(',');
                sheet.append(OPEN_DB + 19 - ATTENUATION_DB).append('\n');
            }
        }
        Files.writeString(temp.resolve("measurements/yard.csv"), sheet);
    }

    private Audit audit(List<Session> sessions) throws Exception {
        List<Product> products = new ClaimsReader(Quantities.forms(), Set.of()).readAll(temp);
        return new Auditor(new AuditOptions(10_000)).audit(products, sessions, List.of());
    }

    private Plan plan() throws Exception {
        return Plan.of(audit(SessionReader.readAll(temp))).get(0);
    }

    @Test
    void whatIsOpenIsPlannedOnceQuietFirstAndTheOpenEarSpared() throws Exception {
        measured(1);
        Plan plan = plan();
        Outlook outlook = plan.outlooks().get(0);
        assertThat(outlook.advice()).isEqualTo(Outlook.Advice.INSERTIONS);
        Sitting sitting = plan.sittings().get(0);
        assertThat(Steps.of(sitting))
                .extracting(step -> String.valueOf(((Map<?, ?>) step).get("readings")))
                .containsExactly("quiet, pink-75 (2 times)", "flood quiet, flood pink-94", "flood pink-94");
        assertThat(sitting.readings()).hasSize(3 + 1 + outlook.insertions());
        assertThat(sitting.openEarScaled()).isTrue();
    }

    /**
     * n = (1.645 + 0.842)² s² / (d² − (…)² r²): with d = 1.4 dB, a single insertion 1.5² + a seal in two of seven bands,
     * and a reading in place; the open ear's reading errors stay.
     */
    @Test
    void theNumberOfInsertionsIsThatOfTheNormalFormula() throws Exception {
        measured(1);
        double seal = (2 * 0.6 + 5 * 0.1) / 7;
        double staying = 0.3 * 0.3 / 7 / 2;
        double repeated = 1.5 * 1.5 + seal * seal + 0.3 * 0.3 / 7;
        double z = 1.6449 + 0.8416;
        int n = (int) Math.ceil(repeated / (1.4 * 1.4 / (z * z) - staying));
        Outlook outlook = plan().outlooks().get(0);
        assertThat(outlook.insertions()).isEqualTo(n).isEqualTo(8);
        assertThat(outlook.wouldPass()).isEqualTo("\u2265 13.8 dB");
    }

    @Test
    void whatIsTooLoudForPeopleIsNotPlannedOnThem() throws Exception {
        measured(1);
        Plan plan = plan();
        assertThat(plan.outlooks().get(1).advice()).isEqualTo(Outlook.Advice.FIXTURE);
        assertThat(plan.sittings().get(0).stimuli()).allMatch(sound -> Loudness.fieldDb(sound) <= 94);
    }

    @Test
    void onceTheSheetIsFilledTheOpenClaimIsDecided() throws Exception {
        measured(1);
        assertThat(audit(SessionReader.readAll(temp))
                        .products()
                        .get(0)
                        .claims()
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.MARGINAL);
        Map<String, String> files = new HashMap<>(PlanFiles.of(List.of(plan())));
        String sheet = files.get("plan-yard.csv");
        for (String row : sheet.lines().skip(1).toList()) {
            double level =
                    row.contains("quiet") ? 20 : row.startsWith("open ear") ? OPEN_DB : OPEN_DB + 19 - ATTENUATION_DB;
            sheet = sheet.replace(row + "\n", row + level + "\n");
        }
        Files.writeString(temp.resolve("measurements/plan-yard.yaml"), files.get("plan-yard.yaml"));
        Files.writeString(temp.resolve("measurements/plan-yard.csv"), sheet);

        Session planned = SessionReader.read(temp, "measurements/plan-yard.yaml");
        assertThat(planned.uncertainty())
                .usingRecursiveComparison()
                .ignoringFieldsMatchingRegexes(".*sizes.*")
                .isEqualTo(SessionReader.read(temp, "measurements/yard.yaml").uncertainty());
        assertThat(audit(List.of(planned)).products().get(0).claims().get(0).verdict())
                .isEqualTo(Verdict.PASS);
    }

    @Test
    void fromClaimsAloneASittingIsPlannedWithTypicalSizes() throws Exception {
        Plan plan = plan();
        Outlook outlook = plan.outlooks().get(0);
        assertThat(outlook.advice()).isEqualTo(Outlook.Advice.FIRST_MARGIN);
        assertThat(outlook.insertions()).isEqualTo(3);
        assertThat(PlanFiles.of(List.of(plan)).get("plan-skerry.yaml"))
                .contains("uncertainty: typical probe tube\n")
                .contains("  \"pink-noise-94\": {kind: \"pink noise\", level: 94 dB SPL}\n")
                .contains("  \"pink-noise-75\": {kind: \"pink noise\", level: 75 dB SPL}\n");
    }

    /** Sittings drawn from the declared sizes, the value of the first one true: 600 of them, so about ± 0.05 (3 s). */
    @Test
    void followingThePlanDecidesAsOftenAsItSays() throws Exception {
        measured(1);
        Plan plan = plan();
        Sitting sitting = plan.sittings().get(0);
        NormalStream draw = new NormalStream(Seeds.of("plan", "followed"));
        int firm = 0;
        for (int i = 0; i < 600; i++) {
            Session drawn = sitting.session(sitting.uncertainty().orElseThrow(), new Drawn(draw)::levelDb);
            Verdict verdict =
                    audit(List.of(drawn)).products().get(0).claims().get(0).verdict();
            firm += verdict == Verdict.PASS || verdict == Verdict.FAIL ? 1 : 0;
        }
        assertThat(firm / 600.0).isCloseTo(plan.outlooks().get(0).chance().orElseThrow(), within(0.05));
    }

    /** One draw of a sitting. */
    private static final class Drawn {
        private final NormalStream draw;
        private final double calibrationDb;
        private final Map<Integer, double[]> insertionsDb = new HashMap<>();

        Drawn(NormalStream draw) {
            this.draw = draw;
            calibrationDb = 0.5 * draw.next();
        }

        double levelDb(PlannedReading reading, Band band) {
            double level =
                    reading.stimulus().isQuiet() ? 20 : reading.isOpenEar() ? OPEN_DB : OPEN_DB + 19 - ATTENUATION_DB;
            double insertion = reading.insertion()
                    .map(number ->
                            insertionsDb.computeIfAbsent(number, k -> new double[] {1.5 * draw.next(), draw.next()}))
                    .map(errors -> errors[0] + (band.nominalHz() < 450 ? 0.6 : 0.1) * errors[1])
                    .orElse(0.0);
            return level + calibrationDb + insertion + 0.3 * draw.next();
        }
    }

    @Test
    void theExposureOfTheOpenEarIsThatOfItsReadings() {
        var sound = new org.ellwand.measurement.Stimulus(
                "pink-94",
                "pink noise",
                List.of(new org.ellwand.amount.Amount(94, org.ellwand.amount.Unit.DB_A, 0)),
                java.util.Optional.empty());
        // NIOSH 98-126, table 1-1: 94 dB(A) for 1 h is a day's dose, so two readings of 3 min are a tenth.
        assertThat(new EarExposure(List.of(sound, sound), 180).model()).containsEntry("niosh", "10 %");
    }

    @Test
    void theLevelThatAnAttenuationNeedsIsReadOffTheBackground() throws Exception {
        measured(1);
        Sitting sitting = plan().sittings().get(0);
        Session read = sitting.session(
                sitting.uncertainty().orElseThrow(),
                (reading, band) -> reading.stimulus().isQuiet() ? 20 : 60);
        var sound = sitting.stimuli().stream()
                .filter(one -> one.id().equals("pink-75"))
                .findFirst()
                .orElseThrow();
        // Bands stand 40 dB above the background at 75 dB; 15 dB clear of it and 30 dB of attenuation need 5 dB more.
        assertThat(Floor.neededDb(read, sound, 30)).hasValue(80);
    }
}
