package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a rating may be worked out from, what it is never worked out from, and what is said of it. All is invented. */
class RatingJudgeTest {
    private static final String SNR =
            "{quantity: rating, of: SNR, limit: 20 dB, tolerance: rounding, performance: 84 %, method: ";
    private static final String OF_1994 = SNR + "'ISO 4869-2:1994'}";
    private static final String OF_2018 = SNR + "'ISO 4869-2:2018'}";
    private static final String NRR =
            "{quantity: rating, of: NRR, limit: 18 dB, tolerance: rounding, method: 40 CFR 211.207}";
    private static final String NO_CERTIFICATE =
            "no certification: a rating is certified by a laboratory that followed the whole standard procedure";

    /** Flat, so that SNR is 20 + 1.513 dB less the deviation (see SingleNumberRatingTest). */
    private static final String FLAT = """
                table:
                  frequency: [63 Hz, 125 Hz, 250 Hz, 500 Hz, 1 kHz, 2 kHz, 4 kHz, 8 kHz]
                  mean:      [20, 20, 20, 20, 20, 20, 20, 20]
                  deviation: [2, 2, 2, 2, 2, 2, 2, 2]
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void folders() throws IOException {
        Files.createDirectories(folder.resolve("claims"));
        Files.createDirectories(folder.resolve("measurements"));
    }

    private Judgement judge(String rule, String table) throws IOException, InputException {
        Files.writeString(folder.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: Box, dated: 2025}]
                claims:
                  - id: one
                    edition: box
                    quote: "Invented."
                    stated: %s
                """.formatted(rule) + table);
        Audit audit = new Auditor(AuditOptions.standard())
                .audit(
                        new ClaimsReader(Quantities.forms(), Set.of()).readAll(folder),
                        SessionReader.readAll(folder),
                        List.of());
        return audit.products().get(0).claims().get(0).plain().orElseThrow();
    }

    private void session(String data, String sheet) throws IOException {
        Files.writeString(folder.resolve("measurements/a.csv"), sheet);
        Files.writeString(folder.resolve("measurements/a.yaml"), """
                session: panel-01
                product: Skerry
                resolution: octave
                levels in: dB SPL
                stimuli: {pink-94: {kind: pink noise, level: 94 dB SPL}}
                uncertainty: unknown
                data: [{file: a.csv, %s}]
                """.formatted(data));
    }

    /** A row for each octave of a subject's trial. */
    private static String trial(String subject, int trial, int firstHz, double levelDb) {
        StringBuilder rows = new StringBuilder();
        for (int hz : List.of(63, 125, 250, 500, 1000, 2000, 4000, 8000)) {
            if (hz >= firstHz) {
                rows.append(subject + "," + trial + "," + hz + "," + levelDb + "\n");
            }
        }
        return rows.toString();
    }

    private void panel(String... trials) throws IOException {
        session("layout: attenuation", "ear,insertion,frequency,attenuation\n" + String.join("", trials));
    }

    private void refused(String rule, String table, String message) {
        assertThatThrownBy(() -> judge(rule, table))
                .isInstanceOf(InputException.class)
                .hasMessage("claims/skerry.yaml:7:5: claim 'one': " + message);
    }

    @Test
    void aPrintedTableIsArithmetic() throws Exception {
        Judgement judgement = judge(OF_1994, FLAT);
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
        assertThat(judgement.probability()).hasValue(1);
        assertThat(judgement.standardUncertainty()).hasValue(0);
        assertThat(judgement.lower()).isEqualTo(judgement.value());
        assertThat(judgement.upper()).isEqualTo(judgement.value());
        assertThat(judgement.cells()).hasSize(1);
        assertThat(judgement.cells().get(0).conditions().values()).isEmpty();
        assertThat(judgement.notes())
                .containsExactly(
                        "worked out from the maker's own printed table: arithmetic on printed numbers, which measures"
                                + " nothing",
                        "comes to 19.51 dB, in whole decibels 20 dB; compared as computed",
                        NO_CERTIFICATE);
    }

    /** Deviations chosen so that the figure is a half to nine decimals: SNR 21.5128685188 dB less 0.012868519 dB. */
    @Test
    void anExactHalfGoesEitherWayWhereTheMethodIsSilent() throws Exception {
        String half = FLAT.replace("2,", ".012868519,").replace("2]", ".012868519]");
        for (int printed : List.of(21, 22)) {
            Judgement judgement = judge(OF_1994.replace("20 dB", printed + " dB"), half);
            assertThat(judgement.verdict()).as("" + printed).isEqualTo(Verdict.PASS);
            assertThat(judgement.notes())
                    .contains("comes to 21.5 dB, in whole decibels 22 dB; compared as computed; the method does not say"
                            + " which way an exact half goes, so it may go either");
        }
    }

    /** 21.6 − 2.0850461482 − 2 · 0.007476926 = 19.5 to nine decimals, which 40 CFR 211.207 sends to 19. */
    @Test
    void theRegulationSendsAnExactHalfDown() throws Exception {
        String half = """
                    table:
                      frequency: [125 Hz, 250 Hz, 500 Hz, 1 kHz, 2 kHz, 3150 Hz, 4 kHz, 6300 Hz, 8 kHz]
                      mean:      [m, m, m, m, m, m, m, m, m]
                      deviation: [s, s, s, s, s, s, s, s, s]
                """.replaceAll("m(?=[,\\]])", "21.6").replaceAll("s(?=[,\\]])", ".007476926");
        Judgement up = judge(NRR.replace("18 dB", "20 dB"), half);
        assertThat(up.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(up.probability()).hasValue(0);
        assertThat(up.notes()).contains("comes to 19.5 dB, in whole decibels 19 dB; compared as computed");
        assertThat(judge(NRR.replace("18 dB", "19 dB"), half).verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void aFigureWithADecimalIsComparedUnrounded() throws Exception {
        Judgement judgement = judge(OF_1994.replace("20 dB", "19.5 dB"), FLAT);
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
        assertThat(judgement.notes()).contains("comes to 19.51 dB, in whole decibels 20 dB; compared as computed");
    }

    @Test
    void aTableMayLeaveOut63HzAndTheNoteSaysSo() throws Exception {
        String table = FLAT.replace("63 Hz, ", "").replace("[20, ", "[").replace("[2, ", "[");
        assertThat(judge(OF_1994, table).notes())
                .contains("computed without 63 Hz, which was not measured throughout and which ISO 4869-2:1994 lets be"
                        + " left out");
    }

    @Test
    void anotherMissingFrequencyAnotherFrequencyAndOneTwiceAreErrors() {
        String table = FLAT.replace("125 Hz", "3150 Hz").replace("500 Hz", "251 Hz");
        refused(
                OF_1994,
                table,
                "the 'table' of a rating by ISO 4869-2:1994 holds 63 (where measured), 125, 250, 500, 1000, 2000, 4000,"
                        + " 8000 Hz, each once: 3150 Hz is none of them; 251 Hz stands twice; 125 Hz is missing;"
                        + " 500 Hz is missing");
    }

    @Test
    void theRegulationTakesItsOwnFrequencies() {
        refused(
                NRR,
                FLAT,
                "the 'table' of a rating by 40 CFR 211.207 holds 125, 250, 500, 1000, 2000, 3150, 4000, 6300, 8000 Hz,"
                        + " each once: 63 Hz is none of them; 3150 Hz is missing; 6300 Hz is missing");
    }

    @Test
    void theNewerEditionCannotBeComputedFromATable() {
        refused(
                OF_2018,
                FLAT,
                "'method: ISO 4869-2:2018' finds the rating of each subject and then their mean and deviation; a 'table'"
                        + " of means and deviations by frequency does not hold the subjects: give their attenuation in"
                        + " a session ('layout: attenuation') instead of the table, or name another method");
    }

    private static final String NEVER =
            "a rating needs the hearing thresholds of a panel, with and without the product,"
                    + " by the standard procedure; what was measured of 'Skerry' is levels at a microphone, whose insertion"
                    + " loss is another quantity and is never turned into a rating: give the maker's own 'table', or the"
                    + " attenuation of each subject ('layout: attenuation'), or say 'untested because'";

    @Test
    void levelsOfAProbeTubeAreNeverTurnedIntoARating() throws IOException {
        session("layout: rows, stimulus: pink-94", "device,frequency,level\nopen ear,1000,80\nSkerry,1000,60\n");
        refused(OF_1994, "", NEVER);
        refused(OF_2018, "", NEVER);
        refused(NRR, "", NEVER);
    }

    @Test
    void neitherAreTheirDifferences() throws IOException {
        session("layout: rows, values: attenuation", "frequency,level\n1000,20\n");
        refused(OF_1994, "", NEVER);
    }

    @Test
    void withoutAnythingItIsUntestedAndSaysWhatItNeeds() throws Exception {
        Judgement judgement = judge(OF_1994, "");
        assertThat(judgement.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(judgement.reason())
                .hasValue("a rating needs the attenuation of each subject of a panel at the hearing threshold"
                        + " ('layout: attenuation'), or the maker's own printed table; there is neither under these"
                        + " conditions");
    }

    /**
     * Trials first: subjects at 20, 22 and 24 dB, mean 22 and deviation 2, so that SNR is 20 + 1.513 dB. Four trials of one
     * subject count once.
     */
    @Test
    void trialsAreAveragedBeforeSubjects() throws Exception {
        panel(
                trial("a", 1, 63, 17),
                trial("a", 2, 63, 23),
                trial("a", 3, 63, 18),
                trial("a", 4, 63, 22),
                trial("b", 1, 63, 22),
                trial("c", 1, 63, 24));
        Judgement judgement = judge(OF_1994, "");
        assertThat(judgement.value().orElseThrow()).isBetween(21.5128, 21.5130);
        assertThat(judgement.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(judgement.probability()).hasValue(0);
        assertThat(judgement.cells().get(0).insertions()).isEqualTo(6);
        assertThat(judgement.cells().get(0).conditions().values())
                .containsOnlyKeys("device", "session")
                .containsEntry("device", "Skerry");
        assertThat(judgement.notes())
                .containsExactly(
                        "worked out from the attenuation of 3 subjects in 6 trials, those of a subject averaged first:"
                                + " it speaks of this panel, and how far another one would differ is not in the"
                                + " probability",
                        "comes to 21.51 dB, in whole decibels 22 dB; compared as computed",
                        NO_CERTIFICATE);
    }

    /** Flat subjects: the rating of each is its level plus a constant, so that both editions agree. */
    @Test
    void theNewerEditionTakesThePanelWithout63Hz() throws Exception {
        panel(trial("a", 1, 125, 20), trial("b", 1, 125, 22), trial("c", 1, 125, 24));
        Judgement judgement = judge(OF_2018, "");
        assertThat(judgement.value().orElseThrow()).isBetween(21.5149, 21.5151);
        assertThat(judgement.notes()).noneMatch(note -> note.contains("63 Hz"));
    }

    @Test
    void aFrequencyThatOneTrialLacksIsMissing() throws Exception {
        panel(trial("a", 1, 125, 20), trial("b", 1, 250, 22));
        Judgement judgement = judge(OF_1994, "");
        assertThat(judgement.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(judgement.reason())
                .hasValue("missing bands: 125 Hz; ISO 4869-2:1994 takes them in every trial of every subject");
    }

    @Test
    void oneSubjectIsNoPanel() throws Exception {
        panel(trial("a", 1, 63, 20), trial("a", 2, 63, 22));
        assertThat(judge(OF_1994, "").reason())
                .hasValue("one subject has no standard deviation: a rating needs a panel");
    }

    @Test
    void severalSettingsAreNamed() throws IOException {
        session(
                "layout: attenuation",
                "setting,ear,insertion,frequency,attenuation\nflood,a,1,1000,20\nebb,a,1,1000,10\n"
                        .replace("ebb,a,1", "ebb,a,2"));
        refused(
                OF_1994,
                "",
                "readings of several values of 'setting' match (ebb, flood): name one, a list, or 'all', so that new"
                        + " data never change a verdict silently");
    }

    /** What panels measured still serves claims about attenuation. */
    @Test
    void aPanelIsAnAttenuationToo() throws Exception {
        panel(trial("a", 1, 63, 20), trial("a", 2, 63, 22));
        Judgement judgement = judge(
                "{quantity: attenuation, level: all, bands: 125 Hz to 8 kHz, statistic: mean, limit: at least 15 dB}",
                "");
        assertThat(judgement.value()).hasValue(21);
    }
}
