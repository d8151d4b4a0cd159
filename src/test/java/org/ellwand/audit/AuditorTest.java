package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.ellwand.acoustics.Resolution;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Claims of several products, each judged with its other readings; 20 dB were taken off, all of it invented. */
class AuditorTest {
    private static final String RULE = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, ";

    private static final Session SESSION = new Bench("yard", Resolution.OCTAVE)
            .cause("insertion", 0.5, SharedBy.INSERTION, false)
            .cause("reading", 0.2, SharedBy.READING, true)
            .reading("device=open ear, stimulus=n94", 1000, 80)
            .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60)
            .session();

    @TempDir
    Path folder;

    @BeforeEach
    void claims() throws IOException {
        Files.createDirectories(folder.resolve("claims"));
    }

    private void write(String file, String product, String claims) throws IOException {
        Files.writeString(
                folder.resolve("claims").resolve(file),
                "product: " + product + "\nabout: Invented\neditions: [{id: box, source: Box, dated: 2025}]\nclaims:\n"
                        + claims);
    }

    private static String claim(String id, String rule) {
        return "  - {id: " + id + ", edition: box, quote: Invented., stated: {" + rule + "}}\n";
    }

    private static String claim(String id, String rule, String more) {
        return claim(id, rule).replace("}}\n", "}, " + more + "}\n");
    }

    private Audit audit() throws InputException, IOException {
        List<Product> products = new ClaimsReader(Quantities.forms(), Set.of()).readAll(folder);
        return new Auditor(new AuditOptions(1000)).audit(products, List.of(SESSION), List.of());
    }

    @Test
    void everyProductHasItsOwnClaimsInTheirOrder() throws Exception {
        write(
                "a.yaml",
                "Skerry",
                claim("one", RULE + "limit: at least 15 dB") + claim("two", RULE + "limit: at least 25 dB"));
        write("b.yaml", "Tide", claim("three", RULE + "limit: at least 15 dB"));
        write("c.yaml", "Wrack", claim("four", RULE + "limit: at least 15 dB"));
        assertThat(audit().products())
                .extracting(p -> p.product().name()
                        + p.claims().stream()
                                .map(c ->
                                        " " + c.claim().id() + " " + c.verdict().word())
                                .toList())
                .containsExactly("Skerry[ one pass,  two fail]", "Tide[ three untested]", "Wrack[ four untested]");
    }

    private List<String> notes() throws Exception {
        return audit().products().get(0).claims().get(0).notes();
    }

    @Test
    void otherReadingsThatAgreeAreCountedWithThePlainOne() throws Exception {
        write(
                "a.yaml",
                "Skerry",
                claim(
                        "one",
                        RULE + "limit: at least 15 dB",
                        "otherwise: [{name: strict, limit: at least 16 dB}, {name: stricter, limit: at least 17 dB}]"));
        assertThat(notes()).containsExactly("same under all 3 rules");
    }

    @Test
    void thoseThatDifferAreNamedWithTheirVerdicts() throws Exception {
        write(
                "a.yaml",
                "Skerry",
                claim(
                        "one",
                        RULE + "limit: at least 15 dB",
                        "otherwise: [{name: strict, limit: at least 16 dB}, {name: stricter, limit: at least 25 dB},"
                                + " {name: narrow, limit: at least 20 dB}]"));
        assertThat(notes()).containsExactly("differs under: stricter (fail), narrow (marginal)");
    }

    @Test
    void ofOneReadingThereIsNothingToSay() throws Exception {
        write("a.yaml", "Skerry", claim("one", RULE + "limit: at least 15 dB"));
        assertThat(notes()).isEmpty();
    }

    @Test
    void aWaiverIsSaid() throws Exception {
        write(
                "a.yaml",
                "Skerry",
                claim(
                        "one",
                        RULE + "limit: at least 25 dB",
                        "waiver: {owner: A. Engineer, reason: new tips are on their way, until: 2026-12-31}"));
        assertThat(notes()).containsExactly("waived until 2026-12-31 by A. Engineer: new tips are on their way");
    }

    @Test
    void rulesThatNoEvidenceCanBeAboutAreRefusedTogetherByTheirClaims() throws Exception {
        write(
                "a.yaml",
                "Skerry",
                claim("both", RULE + "limit: at least 15 dB, ears: share of 80 %, units: share of 90 %")
                        + claim("fine", RULE + "limit: at least 15 dB, ears: share of 80 %")
                        + claim(
                                "median",
                                RULE.replace("mean", "median") + "limit: at least 15 dB, units: share of 80 %"));
        assertThatThrownBy(this::audit)
                .isInstanceOf(InputException.class)
                .hasMessage("claims/a.yaml:5:48: claim 'both': 'ears' and 'units' cannot both be a share: say 'each' or"
                        + " 'mean' of one of them\n"
                        + "claims/a.yaml:7:50: claim 'median': a share cannot be told by 'statistic: median', which noise"
                        + " shifts in every ear: it takes every band, mean, slope, overall");
    }

    @Test
    void aQuantityRefusesWhatCannotTellIt() throws Exception {
        write(
                "a.yaml",
                "Skerry",
                claim(
                        "one",
                        "quantity: onset level, drop: 3 dB, bands: 1 kHz, statistic: median, limit: at least 80 dB SPL"));
        assertThatThrownBy(this::audit)
                .hasMessageContaining(
                        "claim 'one': onset level cannot be told by 'statistic: median', which noise shifts"
                                + " from level to level: it takes every band, mean, overall");
    }

    @Test
    void trials() {
        assertThat(new AuditOptions(1000).trials()).isEqualTo(1000);
        assertThat(AuditOptions.standard().trials()).isEqualTo(100_000);
        assertThatThrownBy(() -> new AuditOptions(999)).hasMessage("at least 1000 trials, not 999");
    }
}
