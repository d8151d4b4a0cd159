package org.ellwand.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Unit;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionReaderTest {
    @TempDir
    Path path;

    private Folder folder() {
        return new Folder(path);
    }

    private Session tidy(String csv) throws IOException, InputException {
        return folder().with("measurements/a.yaml", BadSessionTest.YAML)
                .with("measurements/a.csv", csv)
                .only();
    }

    private static Band third(double hz) {
        return Band.nearest(Resolution.THIRD_OCTAVE, hz);
    }

    /** An invented session of one ear: 19 bands, two open-ear curves, four insertions of two settings and two levels. */
    @Test
    void readsAWholeSession() throws InputException, URISyntaxException {
        Path first = Path.of(Objects.requireNonNull(SessionReaderTest.class.getResource("first"))
                .toURI());
        Session session = SessionReader.read(first, "measurements/crew-01.yaml");
        assertThat(session.id()).isEqualTo("crew-01");
        assertThat(session.file()).isEqualTo("measurements/crew-01.yaml");
        assertThat(session.measured()).contains("2026-06-11");
        assertThat(session.levelsIn()).contains(Unit.DB_SPL);
        assertThat(session.settingsSwitchedInPlace()).isTrue();
        assertThat(session.dataFiles()).containsExactly("measurements/crew-01.csv");
        assertThat(session.readings()).hasSize(14);
        CurveReading flood = session.readings().get(2);
        assertThat(flood.conditions())
                .hasToString(
                        "device=Skerry, ear=crew-01-left, insertion=1, session=crew-01, setting=flood, stimulus=n94");
        assertThat(flood.place()).isEqualTo(new Place("measurements/crew-01.csv", 4, 0));
        assertThat(flood.spectrum().bandList()).hasSize(19);
        assertThat(flood.spectrum().at(third(8000)).orElseThrow().levelDb()).isEqualTo(64.91);
        assertThat(session.readings().get(0).conditions())
                .hasToString("device=open ear, ear=crew-01-left, session=crew-01, stimulus=n62");
        assertThat(session.stimulusOf(flood.conditions()).orElseThrow().levelIn(Unit.DB_SPL))
                .contains(94.0);
    }

    @Test
    void fiveDialectsOfOneSheetAreOneSession() throws IOException, InputException {
        Session comma = tidy(BadSessionTest.CSV);
        assertThat(comma.readings()).hasSize(2);
        String semicolons = BadSessionTest.CSV.replace(',', ';').replace('.', ',');
        assertThat(tidy(semicolons)).isEqualTo(comma);
        assertThat(tidy(BadSessionTest.CSV.replace(',', '\t'))).isEqualTo(comma);
        assertThat(tidy("\uFEFF" + BadSessionTest.CSV.replace("\n", "\r\n"))).isEqualTo(comma);
        assertThat(tidy(BadSessionTest.CSV.replace('\n', '\r'))).isEqualTo(comma);
        assertThat(tidy("""
                "Device","SETTING"," Insertion ","Frequency [KHZ]","LEVEL (db spl)",
                "open ear","","","1","65.2",
                "open ear","","","1.25","66.10",
                "","flood","1","1","4.52E+01",
                "","flood","1","1.2589","46",
                ,,,,,
                """)).isEqualTo(comma);
    }

    /** An empty cell takes the default: it is the same reading as a cell that says so. */
    @Test
    void rowsThatNameADefaultAndRowsThatLeaveItOutAreOneReading() throws IOException, InputException {
        Session named = tidy("device,setting,frequency,level\nSkerry Tide,flood,1250,46\nSkerry Tide,flood,1000,45\n");
        assertThat(tidy("device,setting,frequency,level\nSkerry Tide,flood,1250,46\n,flood,1000,45\n"))
                .isEqualTo(named);
        assertThat(folder().with(
                                "measurements/a.csv",
                                "device,frequency,level\n,1250,46\n,1000,45\nSkerry Tide,1000,45\n")
                        .problems())
                .containsExactly("measurements/a.csv:4: the same reading was given before, at measurements/a.csv:2:"
                        + " device=Skerry Tide, ear=crew-01-left, session=a, stimulus=pink-65");
    }

    @Test
    void numbersAreTheNearestThereAre() throws IOException, InputException {
        Session session =
                tidy("frequency,level\n1000,-0.1\n1250,\u22123.30\n1600,.5\n2000,+7\n2500,123456789.123456789\n");
        assertThat(session.readings().get(0).spectrum().levels().values())
                .extracting(level -> level.levelDb())
                .containsExactly(-0.1, -3.3, 0.5, 7.0, 123456789.123456789);
    }

    @Test
    void orderDoesNotMatterAndAnEmptyCellIsAMissingBand() throws IOException, InputException {
        Session session = tidy("frequency,level\n1250,60\n800,61\n1000,\n");
        assertThat(session.readings().get(0).spectrum().bandList()).containsExactly(third(800), third(1250));
    }

    @Test
    void namesStayText() throws IOException, InputException {
        Session session = folder().with(
                        "measurements/a.yaml",
                        BadSessionTest.YAML.replace("ear: crew-01-left", "firmware: 1.10\nside: no"))
                .with("measurements/a.csv", BadSessionTest.CSV.replace(",1,", ",01,"))
                .only();
        assertThat(session.readings().get(1).conditions())
                .hasToString("device=Skerry Tide, firmware=1.10, insertion=01, session=a, setting=flood, side=no,"
                        + " stimulus=pink-65");
        assertThat(session.readings().get(0).conditions())
                .hasToString("device=open ear, session=a, side=no, stimulus=pink-65");
    }

    @Test
    void theOpenEarForgetsTheProductAndKeepsAnInsertionOfItsOwn() throws IOException, InputException {
        Session session = tidy("""
                device,setting,fit,insertion,take,frequency,level
                open ear,flood,foam,1,,1000,60
                open ear,,,2,,1000,61
                field microphone,,,,1,1000,62
                """);
        assertThat(session.readings())
                .extracting(reading -> reading.conditions().toString())
                .containsExactly(
                        "device=open ear, ear=crew-01-left, insertion=1, session=a, stimulus=pink-65",
                        "device=open ear, ear=crew-01-left, insertion=2, session=a, stimulus=pink-65",
                        "device=field microphone, ear=crew-01-left, session=a, stimulus=pink-65, take=1");
    }

    @Test
    void aSheetOfColumnsIsMappedByItsHeaders() throws IOException, InputException {
        String entry = "{file: a.csv, layout: rows, stimulus: pink-65}";
        String columns = """
                file: a.csv
                    layout: columns
                    header line: 3
                    ignore: [remarks]
                    stimulus: pink-65
                    columns:
                      open 65: {device: open ear}
                      flood 65 (1): {setting: flood, insertion: 1}
                      Flood 65 (2): {setting: flood, insertion: 2}
                """;
        Session session = folder().with("measurements/a.yaml", BadSessionTest.YAML.replace(entry, columns.strip()))
                .with("measurements/a.csv", """
                        Analyser 7; serial 12
                        2026-06-11
                        Hz;Open 65 (dB SPL);flood 65 (1);flood 65 (2) [dB SPL];Remarks
                        1000;65,2;45,2;45,4;a gull
                        1250;66,1;;46,2;
                        """)
                .only();
        assertThat(session.readings())
                .extracting(reading -> reading.get("insertion").orElse("-"))
                .containsExactly("-", "1", "2");
        assertThat(session.readings().get(1).spectrum().bandList()).containsExactly(third(1000));
        assertThat(session.readings()
                        .get(2)
                        .spectrum()
                        .at(third(1250))
                        .orElseThrow()
                        .levelDb())
                .isEqualTo(46.2);
        assertThat(session.readings().get(2).place()).isEqualTo(new Place("measurements/a.csv", 3, 0));
    }

    @Test
    void aColumnNeitherListedNorIgnoredPrintsWhatToAdd() throws IOException {
        String entry = "{file: a.csv, layout: rows, stimulus: pink-65}";
        List<String> problems = folder().with(
                        "measurements/a.yaml",
                        BadSessionTest.YAML.replace(
                                entry,
                                "{file: a.csv, layout: columns, columns: {open 65: {device: open ear}, ebb: {}}}"))
                .with("measurements/a.csv", "f,open 65,flod \"65\" (1),ebbs\n1000,1,2,3\n")
                .problems();
        assertThat(problems)
                .containsExactly(
                        """
                        measurements/a.csv:1: column "ebbs" is neither listed nor ignored; beside the file write\
                         'ignore: ["ebbs"]', or under its 'columns' the line\
                         '"ebbs": {setting: …, stimulus: …}' with what it was measured under""", """
                        measurements/a.csv:1: column "flod \\"65\\" (1)" is neither listed nor ignored; beside the file\
                         write 'ignore: ["flod \\"65\\" (1)"]', or under its 'columns' the line\
                         '"flod \\"65\\" (1)": {setting: …, stimulus: …}' with what it was measured under""", "measurements/a.yaml:13:75: no column is called 'ebb' (did you mean 'ebbs'?)");
    }

    @Test
    void attenuationPerSubjectNeedsNoOpenEar() throws IOException, InputException {
        Session session = folder().with("measurements/a.yaml", """
                        session: a
                        product: Skerry Tide
                        resolution: octave
                        uncertainty: unknown
                        data: [{file: a.csv, layout: attenuation}]
                        """)
                .with("measurements/a.csv", "ear,frequency (Hz),attenuation (dB)\ncrew-01,125,10.4\ncrew-02,125,9.8\n")
                .only();
        assertThat(session.uncertainty()).isEqualTo(new Uncertainty.Unknown());
        assertThat(session.readings()).extracting(Reading::values).containsOnly(Reading.Values.SUBJECT_ATTENUATION);
        assertThat(session.readings())
                .extracting(reading -> reading.get("ear").orElseThrow())
                .containsExactly("crew-01", "crew-02");
    }

    @Test
    void harmonicsTracesAndFigures() throws IOException, InputException {
        Session session = folder().with("measurements/a.yaml", """
                        session: a
                        product: Skerry Tide
                        uncertainty: unknown
                        data: [{file: h.csv, layout: harmonics, fundamental: 500 Hz, setting: flood}]
                        traces: [{file: t.csv, setting: flood, step: {at: 10 ms, from: 55 dB SPL, to: 90 dB SPL}}]
                        figures: [{of: battery life, value: 19.2 h, uncertainty: 30 min, unit: SN-0007}]
                        """)
                .with("measurements/h.csv", "order,level (dB SPL)\n1,90\n2,41.5\n3,\n")
                .with("measurements/t.csv", "time (ms);level (dB SPL)\n0;55\n12,5;88\n20;80\n")
                .only();
        assertThat(session.harmonics().get(0).levelDbByOrder()).isEqualTo(Map.of(1, 90.0, 2, 41.5));
        assertThat(session.harmonics().get(0).fundamental().orElseThrow().in(Unit.HZ))
                .isEqualTo(500);
        Trace trace = session.traces().get(0);
        assertThat(trace.timeS().get(1)).isCloseTo(0.0125, within(1e-15));
        assertThat(trace.levelDb()).containsExactly(55.0, 88.0, 80.0);
        assertThat(trace.conditions()).hasToString("device=Skerry Tide, session=a, setting=flood");
        assertThat(trace.step().orElseThrow().at().in(Unit.SECOND)).isEqualTo(0.01);
        assertThat(trace.step().orElseThrow().to().value()).isEqualTo(90);
        assertThat(trace.levelsIn()).isEqualTo(Unit.DB_SPL);
        assertThat(trace.levels().endS()).isEqualTo(0.02);
        assertThat(session.figures().get(0).uncertainty().orElseThrow().in(Unit.HOUR))
                .isEqualTo(0.5);
        assertThat(session.figures().get(0).conditions().get("unit")).contains("SN-0007");
        assertThat(session.dataFiles()).containsExactly("measurements/h.csv", "measurements/t.csv");
    }

    @Test
    void aTraceNamesTheUnitOfItsTimeRisesAndHoldsItsStep() throws IOException {
        Folder folder = folder().with("measurements/a.yaml", """
                session: a
                product: Skerry Tide
                traces:
                  - {file: bare.csv, setting: ebb, step: {at: 1 s, from: 55 dB SPL, to: 90 dB SPL}}
                  - {file: falling.csv, setting: flood, step: {at: 1 s, from: 55 dB SPL, to: 90 dB SPL}}
                  - {file: short.csv, setting: flat, step: {at: 3 s, from: 55 dB SPL, to: 90 dB SPL}}
                """);
        folder.with("measurements/bare.csv", "time,level\n0,55\n2,90\n")
                .with("measurements/falling.csv", "time (s),level\n0,55\n2,90\n1,90\n3,\n")
                .with("measurements/short.csv", "time (s),level\n0,55\n2,90\n");
        assertThat(folder.problems())
                .containsExactly(
                        "measurements/a.yaml:6:44: the step lies outside the trace, which runs from 0.0 s to 2.0 s",
                        "measurements/bare.csv:1: column 'time' needs its unit, as in 'time (s)' or 'time (ms)'",
                        "measurements/falling.csv:4: '1': the time does not rise",
                        "measurements/falling.csv:5: a cell is empty; a trace has a time and a level in every row");
    }

    /** Milliseconds that are taken for seconds last for minutes, or have their step before the second row. */
    @Test
    void aTimeWithoutAUnitIsInSecondsWhereTheStepBearsItOut() throws IOException, InputException {
        String session = """
                session: a
                product: Skerry Tide
                traces:
                  - {file: bare.csv, setting: flood, step: {at: 200 ms, from: 55 dB SPL, to: 90 dB SPL}}
                """;
        Folder seconds = folder().with("measurements/a.yaml", session)
                .with("measurements/bare.csv", "Time,level\n0,55\n0.1,55\n0.3,80\n60,90\n");
        assertThat(seconds.only().traces().get(0).timeS()).containsExactly(0.0, 0.1, 0.3, 60.0);

        String unit = "measurements/bare.csv:1: column 'time' needs its unit, as in 'time (s)' or 'time (ms)'";
        Folder coarse = folder().with("measurements/a.yaml", session)
                .with("measurements/bare.csv", "time,level\n0,55\n1,55\n2,55\n30,90\n");
        assertThat(coarse.problems()).containsExactly(unit);
        Folder fine = folder().with("measurements/a.yaml", session)
                .with("measurements/bare.csv", "time,level\n0,55\n0.1,55\n0.3,80\n60.1,90\n");
        assertThat(fine.problems()).containsExactly(unit);
    }

    @Test
    void aTraceWithoutAStepIsSteadyAndMayBeOfTheOpenEar() throws IOException, InputException {
        Session session = folder().with("measurements/a.yaml", """
                        session: a
                        product: Skerry Tide
                        insertion: 1
                        stimuli: {reel-97: {kind: music, level: 97 dB SPL}}
                        traces:
                          - {file: t.csv, setting: flood, stimulus: reel-97}
                          - {file: t.csv, device: open ear, setting: flood, stimulus: reel-97}
                          - {file: t.csv, device: open ear, stimulus: reel-97, insertion: 2}
                          - {file: t.csv, device: open ear, stimulus: reel-97, take: 2}
                        """)
                .with("measurements/t.csv", "time (s),level (dBA)\n0,55\n2,90\n")
                .only();
        assertThat(session.traces()).allMatch(trace -> trace.step().isEmpty() && trace.levelsIn() == Unit.DB_A);
        assertThat(session.traces())
                .extracting(trace -> trace.conditions().toString())
                .containsExactly(
                        "device=Skerry Tide, insertion=1, session=a, setting=flood, stimulus=reel-97",
                        "device=open ear, session=a, stimulus=reel-97",
                        "device=open ear, insertion=2, session=a, stimulus=reel-97",
                        "device=open ear, session=a, stimulus=reel-97, take=2");
    }

    @Test
    void aSteadyTraceNamesItsUnitHasALengthAndIsGivenOnce() throws IOException {
        Folder folder = folder().with("measurements/a.yaml", """
                session: a
                product: Skerry Tide
                traces:
                  - {file: bare.csv, setting: ebb}
                  - {file: plain.csv, setting: flat}
                  - {file: short.csv, setting: flood}
                  - {file: short.csv, setting: flood, step: {at: 1 s, from: 55 dB SPL, to: 90 dB SPL}}
                  - {file: short.csv, setting: flood}
                """);
        folder.with("measurements/bare.csv", "time (s),level\n0,55\n2,90\n")
                .with("measurements/plain.csv", "time (s),level (dB)\n0,55\n2,90\n")
                .with("measurements/short.csv", "time (s),level (dB SPL)\n0,55\n");
        assertThat(folder.problems())
                .containsExactly(
                        "measurements/a.yaml:7:45: the step lies outside the trace, which runs from 0.0 s to 0.0 s",
                        "measurements/a.yaml:8:5: the same trace without a step was given before, at"
                                + " measurements/a.yaml:6:5: device=Skerry Tide, session=a, setting=flood",
                        "measurements/bare.csv:1: column 'level' needs its unit, as in 'level (dB SPL)': neither"
                                + " 'levels in' nor a step names it",
                        "measurements/plain.csv:1: column 'level (dB)' needs its unit, as in 'level (dB SPL)': neither"
                                + " 'levels in' nor a step names it",
                        "measurements/short.csv: has one row; a trace has two or more");
    }

    @Test
    void aSessionOfFiguresNeedsNothingElse() throws IOException, InputException {
        Session session = folder().with(
                        "measurements/a.yml", "session: a\nproduct: Skerry Tide\nfigures: [{of: mass, value: 4.1 g}]\n")
                .only();
        assertThat(session.resolution()).isEmpty();
        assertThat(session.figures()).hasSize(1);
    }

    @Test
    void aCellWithoutEndIsRefused() throws IOException {
        String rows = "device,stimulus,insertion,frequency,level\nopen ear," + "x".repeat(1_100_000) + ",,1000,60\n";
        assertThat(folder().with("measurements/a.yaml", BadSessionTest.YAML)
                        .with("measurements/a.csv", rows)
                        .problems())
                .containsExactly("measurements/a.csv:2: a quote opens here or stands in a cell and is not closed as it"
                        + " should be, or a cell has over 1000000 characters");
    }

    @Test
    void filesThatAreEmptyOrNoText() throws IOException {
        Folder folder = folder().with("measurements/a.yaml", BadSessionTest.YAML);
        assertThat(folder.with("measurements/a.csv", "").problems())
                .containsExactly("measurements/a.csv: is empty; expected a header line and rows below it");
        assertThat(folder.with("measurements/a.csv", "frequency,level\n").problems())
                .containsExactly("measurements/a.csv: has a header and no row below it");
        assertThat(folder.with("measurements/a.csv", "frequency,level," + "x".repeat(1_000_000) + "\n1000,60\n")
                        .problems())
                .containsExactly("measurements/a.csv:1: the header line is longer than 1000000 characters");
        byte[] latin = "frequency,level,fit\r\n1000,60,m\u00FCffig\r\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(folder.with("measurements/a.csv", latin).problems())
                .containsExactly("measurements/a.csv:2: is not UTF-8 text here; save the file as UTF-8");
    }

    @Test
    void oneSheetKeepsToOneDecimalMark() throws IOException {
        assertThat(folder().with("measurements/a.yaml", BadSessionTest.YAML)
                        .with("measurements/a.csv", "frequency;level\n1000;65,2\n1250;1.250\n")
                        .problems())
                .containsExactly("measurements/a.csv:3: column 'level': '1.250' has a decimal point, but line 2 has a"
                        + " decimal comma; a sheet keeps to one of them; expected a level in dB SPL, or an empty cell for a"
                        + " band that was not measured");
    }

    @Test
    void aLinkMayNotLeaveTheFolder() throws IOException {
        Folder folder =
                folder().with("measurements/a.yaml", BadSessionTest.YAML).with("elsewhere/a.csv", BadSessionTest.CSV);
        Files.createSymbolicLink(path.resolve("measurements/a.csv"), path.resolve("elsewhere/a.csv"));
        assertThat(folder.problems())
                .containsExactly("measurements/a.yaml:13:12: 'a.csv' is reached through a link that leaves the folder"
                        + " of the session");
    }

    @Test
    void problemsOfAllSessionsAreToldTogetherAndNamesAreUnique() throws IOException {
        Folder folder = folder().with("measurements/a.yaml", "session: crew\nproduct: Skerry Tide\n")
                .with("measurements/b.yaml", "session: crew\nproduct: Skerry Tide\n")
                .with("measurements/c.yaml", "session: third\nprodukt: Skerry Tide\nopen ear: no\n");
        assertThat(folder.problems()).hasSize(3);
        assertThat(folder.problems().get(0))
                .isEqualTo(
                        "measurements/b.yaml: 'session: crew' is also the name of the session in measurements/a.yaml");
        assertThat(folder.problems().get(1))
                .startsWith("measurements/c.yaml:2:1: 'produkt' is no key of a session (did you mean 'product'?)");
        assertThat(folder.problems().get(2))
                .isEqualTo("measurements/c.yaml:3:11: 'open ear: no' is not accepted; accepted are measured, scaled");
    }

    @Test
    void atMostTwentyProblemsAreToldAndThatReadingEndedThere() throws IOException {
        String rows = "1000,x\n".repeat(50);
        List<String> problems = folder().with("measurements/a.yaml", BadSessionTest.YAML)
                .with("measurements/a.csv", "frequency,level\n" + rows)
                .problems();
        assertThat(problems).hasSize(20);
        String further = " (the session is read no further: there may be more problems)";
        assertThat(problems.get(18)).doesNotEndWith(further);
        assertThat(problems.get(19)).endsWith(further);
    }

    @Test
    void noFolderNoSessions() throws InputException {
        assertThat(SessionReader.readAll(path)).isEmpty();
        assertThatThrownBy(() -> SessionReader.read(path, "measurements/none.yaml"))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("measurements/none.yaml: cannot be read");
    }
}
