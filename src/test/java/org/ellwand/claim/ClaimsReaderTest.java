package org.ellwand.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClaimsReaderTest {
    private static final String MEAN = "bands: 125 Hz to 8 kHz, statistic: mean";

    @TempDir
    Path folder;

    private ClaimsFolder claims;

    @BeforeEach
    void open() throws Exception {
        claims = new ClaimsFolder(folder);
    }

    @Test
    void readsTheExample() throws Exception {
        Product product = claims.read(ClaimsFolder.resource("skerry.yaml"));
        assertThat(product.name()).isEqualTo("Skerry");
        assertThat(product.confidence()).isEqualTo(0.95);
        assertThat(product.editions()).extracting(Edition::id).containsExactly("box", "letter");
        Claim flood = product.claims().get(0);
        Rule plain = flood.rule().orElseThrow();
        assertThat(plain.limit()).isEqualTo(Interval.of(18, 22, Unit.DB));
        assertThat(plain.level()).contains(new LevelChoice.Range(Interval.of(93, 95, Unit.DB_SPL)));
        assertThat(plain.bands()).contains(new BandChoice.Range(Interval.of(125, 8000, Unit.HZ)));
        assertThat(plain.where()).containsExactly(entry("setting", new Choice.OneOf(List.of("flood"))));
        assertThat(plain.stated().keySet()).containsExactly("quantity", "setting", "limit");
        assertThat(plain.assumed().keySet()).containsExactly("tolerance", "level", "bands", "statistic");
        assertThat(flood.otherwise())
                .extracting(Rule::name)
                .containsExactly("strict", "generous", "even", "middle", "a-weighted");
        Rule strict = flood.otherwise().get(0);
        assertThat(strict.limit()).isEqualTo(Interval.atLeast(18, Unit.DB));
        assertThat(strict.stated()).isEmpty();
        assertThat(strict.assumed())
                .containsExactly(entry("statistic", "every band"), entry("limit", "at least 18 dB"));
        assertThat(flood.otherwise().get(4).limit()).isEqualTo(Interval.of(18, 22, Unit.DB));
        assertThat(product.claims().get(6).untestedBecause()).contains("needs an impulse source and a test fixture");
    }

    @Test
    void namesStayText() throws Exception {
        Rule rule = claims.rule(
                "quantity: attenuation, setting: off, limit: at least 1 dB",
                MEAN + ", level: all, firmware: [1.10, 014], fit: all");
        assertThat(rule.where())
                .containsEntry("setting", new Choice.OneOf(List.of("off")))
                .containsEntry("firmware", new Choice.OneOf(List.of("1.10", "014")))
                .containsEntry("fit", new Choice.All());
        assertThat(rule.assumed()).containsEntry("firmware", "1.10, 014");
    }

    @Test
    void bareNumbersAreMeantAsSenseAndToleranceSay() throws Exception {
        String figure = "quantity: figure, of: battery life, limit: 30 h";
        assertThat(claims.rule(figure, "sense: at least").limit()).isEqualTo(Interval.atLeast(30, Unit.HOUR));
        assertThat(claims.rule(figure, "sense: at most").limit()).isEqualTo(Interval.atMost(30, Unit.HOUR));
        assertThat(claims.rule(figure, "sense: at least, tolerance: 10 %").limit())
                .isEqualTo(Interval.atLeast(27, Unit.HOUR));
        assertThat(claims.rule(figure, "sense: at most, tolerance: 90 min").limit())
                .isEqualTo(Interval.atMost(31.5, Unit.HOUR));
        assertThat(claims.rule(figure, "tolerance: +2 h / -1 h").limit()).isEqualTo(Interval.of(29, 32, Unit.HOUR));
        assertThat(claims.rule("quantity: figure, of: mass, limit: 4.50 g", "tolerance: rounding")
                        .limit())
                .isEqualTo(Interval.of(4.495, 4.505, Unit.GRAM));
    }

    @Test
    void outputLevelsAreInTheUnitOfTheirWeighting() throws Exception {
        String rest = "bands: all, level: all, referred to: field";
        assertThat(claims.rule(
                                "quantity: output level, limit: below 85 dB",
                                rest + ", statistic: overall, weighting: A, limit weighting: A")
                        .limit()
                        .unit())
                .isEqualTo(Unit.DB_A);
        assertThat(claims.rule("quantity: output level, limit: below 85 dB SPL", rest + ", statistic: every band")
                        .limit()
                        .unit())
                .isEqualTo(Unit.DB_SPL);
        assertThat(claims.rule(
                                "quantity: output level, limit: at least 6 dB, between: {setting: [flood, ebb]}",
                                rest + ", statistic: mean")
                        .limit()
                        .unit())
                .isEqualTo(Unit.DB);
        assertThat(claims.rule(
                                "quantity: output level, stimulus: quiet, limit: at most 20 dB(A)",
                                "bands: all, referred to: eardrum, statistic: overall, weighting: A")
                        .level())
                .isEmpty();
    }

    @Test
    void aBareLevelIsCompletedByItsWeighting() throws Exception {
        Rule rule = claims.rule(
                "quantity: attenuation, limit: at least 9 dB, level: 90 to 100 dB, level weighting: C", MEAN);
        assertThat(rule.level()).contains(new LevelChoice.Range(Interval.of(90, 100, Unit.DB_C)));
    }

    @Test
    void ratiosAreComparedAsPlainNumbers() throws Exception {
        String figure = "quantity: figure, of: battery life, between: {firmware: [2.1, 2.0]}, compared by: ratio";
        Rule percent = claims.rule(figure + ", limit: at least 150 %", "unit: SN-0007");
        assertThat(percent.limit()).isEqualTo(Interval.atLeast(1.5, Unit.NONE));
        assertThat(percent.ratio()).isTrue();
        assertThat(percent.between()).contains(new Between("firmware", "2.1", "2.0"));
        assertThat(percent.stated()).containsEntry("between", "firmware: 2.1, 2.0");
        assertThat(claims.rule(figure + ", limit: 2 to 3", "unit: SN-0007").limit())
                .isEqualTo(Interval.of(2, 3, Unit.NONE));
    }

    @Test
    void theFilesAssumptionsFillWhatAClaimCanUse() throws Exception {
        Product product = claims.read("assumed: {bands: all, statistic: mean, tolerance: 2 dB, level: all}\n"
                + ClaimsFolder.HEAD
                + "claims:\n"
                + "  - {id: a, edition: box, quote: q, stated: {quantity: attenuation, limit: 9 dB, statistic: lowest}}\n"
                + "  - {id: b, edition: box, quote: q, stated: {quantity: figure, of: mass, limit: at most 5 g}}\n");
        Rule first = product.claims().get(0).rule().orElseThrow();
        assertThat(first.assumed())
                .containsExactly(entry("bands", "all"), entry("tolerance", "2 dB"), entry("level", "all"));
        assertThat(first.statistic()).contains(Statistic.LOWEST);
        assertThat(product.claims().get(1).rule().orElseThrow().assumed()).isEmpty();
    }

    @Test
    void anEditionRestrictsItsClaimsUnlessTheySayOtherwise() throws Exception {
        String head = "product: Skerry\neditions:\n"
                + "  - {id: box, source: Box, dated: 2025, conditions: {firmware: \"2.10\"}}\nclaims:\n";
        String figure = "edition: box, quote: q, stated: {quantity: figure, of: mass, limit: at most 5 g";
        Product product = claims.read(head + "  - {id: a, " + figure + "}}\n  - {id: b, " + figure
                + ", firmware: 3}}\n  - {id: c, " + figure + ", between: {firmware: [1, 2]}}}\n");
        assertThat(product.claims())
                .extracting(claim -> claim.rule().orElseThrow().where().get("firmware"))
                .containsExactly(new Choice.OneOf(List.of("2.10")), new Choice.OneOf(List.of("3")), null);
    }

    @Test
    void privateLettersAreParaphrased() throws Exception {
        Product product = claims.read("product: Skerry\neditions:\n"
                + "  - {id: letter, source: Letter, dated: 2026-02, may be quoted: no}\nclaims:\n"
                + "  - {id: a, edition: letter, quote: secret, paraphrase: in short, untested because: no rig}\n");
        assertThat(product.claims().get(0).words()).isEqualTo("in short");
    }

    @Test
    void readsATargetInThirdOctavesFirst() throws Exception {
        claims.with("target.csv", "frequency (Hz),level (dB)\n125,1.5\n1 kHz,−2\n");
        Rule rule =
                claims.rule("quantity: response, limit: 0 dB ± 3 dB, target: target.csv", MEAN + ", reference: 1 kHz");
        Target.Sheet sheet = (Target.Sheet) rule.target().orElseThrow();
        assertThat(sheet.file()).isEqualTo("claims/target.csv");
        assertThat(sheet.curve().resolution().text()).isEqualTo("third-octave");
        assertThat(sheet.curve().bandList()).hasSize(2);
        assertThat(rule.reference()).contains(new Reference.At(1000));
    }

    @Test
    void aTargetOutsideTheClaimsIsRefusedAlsoThroughALink() throws Exception {
        Path outside = Files.writeString(folder.resolve("outside.csv"), "frequency,level\n125,1\n");
        Files.createSymbolicLink(folder.resolve("claims/link.csv"), outside);
        String rest = "{quantity: response, limit: 0 ± 3 dB, reference: 1 kHz, bands: all, statistic: mean, target: ";
        for (String target : List.of("link.csv", "../outside.csv")) {
            assertThat(claims.refusal(ClaimsFolder.claim("stated: " + rest + target + "}")))
                    .endsWith("'target': '" + target + "' lies outside claims/");
        }
    }

    @Test
    void aTargetOfAMillionBytesIsNone() throws Exception {
        claims.with("target.csv", "frequency,level\n" + "125,1.5\n".repeat(125_000));
        String rest = "{quantity: response, limit: 0 ± 3 dB, reference: 1 kHz, bands: all, statistic: mean, target: ";
        assertThat(claims.refusal(ClaimsFolder.claim("stated: " + rest + "target.csv}")))
                .endsWith("claims/target.csv: longer than 1000000 bytes: a target has one line a band");
    }

    @Test
    void ratingsKeepTheirTable() throws Exception {
        Product product = claims.read(ClaimsFolder.claim("stated: {quantity: rating, of: SNR, limit: 22 dB}\n"
                + "    assumed: {tolerance: rounding, method: \"ISO 4869-2:1994\", performance: 84 %}\n"
                + "    table: {frequency: [63 Hz, 125 Hz], mean: [8.0, 10.4], deviation: [3.1, 3.4]}"));
        Rule rule = product.claims().get(0).rule().orElseThrow();
        assertThat(rule.limit()).isEqualTo(Interval.of(21.5, 22.5, Unit.DB));
        assertThat(rule.method()).containsExactly(entry("method", "ISO 4869-2:1994"), entry("performance", "84 %"));
        assertThat(rule.table()).containsEntry("mean", "8.0, 10.4");
    }

    @Test
    void populationsAndDeclaredConditions() throws Exception {
        Rule rule = claims.rule(
                "quantity: insertion gain, limit: 0 ± 3 dB, direction: front",
                MEAN + ", level: below 70 dB SPL, ears: share of 90 %, units: each");
        assertThat(rule.ears()).contains(new Population.Share(90));
        assertThat(rule.units()).contains(new Population.Each());
        assertThat(rule.where()).containsKey("direction");
    }

    @Test
    void readsEveryFileDirectlyInTheFolder() throws Exception {
        String text = ClaimsFolder.claim("untested because: no rig");
        claims.with("b.yml", text.replaceFirst("product: .*", "product: Skerry Tide"))
                .with("a.yaml", text)
                .with("notes.txt", "no");
        Files.createDirectory(folder.resolve("claims/old.yaml"));
        assertThat(ClaimsFolder.reader().readAll(folder))
                .extracting(Product::file)
                .containsExactly("claims/a.yaml", "claims/b.yml");
    }

    @Test
    void aProductHasOneFile() throws Exception {
        String text = ClaimsFolder.claim("untested because: no rig");
        claims.with("b.yaml", text).with("a.yaml", text);
        assertThatThrownBy(() -> ClaimsFolder.reader().readAll(folder))
                .hasMessage(
                        "claims/b.yaml: is about 'Skerry', and so is claims/a.yaml: a product has one file, with all"
                                + " its editions");
    }

    /** What a file may hold is measured in its characters; claims are not counted. */
    @Test
    void aFileHoldsAsManyClaimsAsItsCharactersLet() throws Exception {
        String each = """
                  - id: c%d
                    edition: box
                    quote: Takes 22 dB off.
                    stated: {quantity: attenuation, setting: flood, limit: 22 dB}
                    assumed: {tolerance: 4 dB, level: 94 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean, ears: each}
                """;
        String many = IntStream.range(0, 4000)
                .mapToObj(i -> String.format(Locale.ROOT, each, i))
                .collect(Collectors.joining());
        assertThat(claims.read(ClaimsFolder.HEAD + "claims:\n" + many).claims()).hasSize(4000);
    }

    @Test
    void aFolderWithoutClaimsIsAnError() {
        assertThatThrownBy(() -> ClaimsFolder.reader().readAll(folder))
                .hasMessage("claims: there is no claims file here: put one, as claims/product.yaml, into it");
    }
}
