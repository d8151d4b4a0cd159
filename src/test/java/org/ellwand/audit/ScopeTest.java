package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Figure;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A small folder, read, narrowed and judged; two products, two sessions, five firmwares, all of them invented. */
class ScopeTest {
    private static final int TRIALS = 1000;

    @TempDir
    Path folder;

    @BeforeEach
    void files() throws IOException {
        Files.createDirectories(folder.resolve("claims"));
        Files.createDirectories(folder.resolve("measurements"));
        write("claims/skerry.yaml", """
                product: Skerry
                about: Invented
                editions:
                  - {id: box, source: The box, dated: 2025}
                  - {id: web, source: A page, dated: 2026, conditions: {firmware: "2.1"}}
                  - {id: old, source: An older page, dated: 2024, conditions: {firmware: "2.0"}}
                claims:
                  - id: light
                    edition: box
                    quote: "Light."
                    stated: {quantity: figure, of: mass, washes: "3", limit: at most 5 g}
                  - id: deep
                    edition: web
                    quote: "Deep."
                    stated: {quantity: attenuation, level: 80 dB SPL, bands: 500 Hz to 1 kHz, statistic: mean, limit: at least 15 dB}
                  - id: shallow
                    edition: old
                    quote: "Shallow."
                    stated: {quantity: attenuation, level: 80 dB SPL, bands: 500 Hz to 1 kHz, statistic: mean, limit: at least 5 dB}
                """);
        write("claims/tide.yaml", """
                product: Tide
                about: Invented
                editions: [{id: leaflet, source: A leaflet, dated: 2025}]
                claims:
                  - id: curve
                    edition: leaflet
                    quote: "On the curve."
                    stated: {quantity: response, stimulus: tone, bands: all, reference: 1 kHz, statistic: every band,
                             limit: 0 dB ± 3 dB, target: target.csv}
                    otherwise: [{name: house, target: other.csv}]
                """);
        write("claims/target.csv", "frequency,level\n500,1\n1000,0\n");
        write("claims/other.csv", "frequency,level\n500,2\n1000,0\n");
        write("measurements/quay.yaml", """
                session: quay
                product: Skerry
                conditions: [washes]
                figures:
                  - {of: mass, value: 4 g, uncertainty: 0.1 g, washes: "3"}
                  - {of: mass, value: 4.2 g, uncertainty: 0.1 g, washes: "9", firmware: "2.4"}
                """);
        write("measurements/yard.yaml", """
                session: yard
                product: Skerry
                ear: crew-01-left
                resolution: octave
                levels in: dB SPL
                stimuli: {tone: {kind: tone, level: 80 dB SPL}}
                uncertainty: [{cause: reading, size: 0.3 dB, shared by: reading}, {cause: put in, size: 0.3 dB, shared by: insertion}]
                data:
                  - {file: yard.csv, layout: rows, stimulus: tone}
                  - {file: harmonics.csv, layout: harmonics, fundamental: 500 Hz, stimulus: tone, firmware: "2.3"}
                traces:
                  - {file: steady.csv, insertion: 1, stimulus: tone, firmware: "2.2"}
                """);
        write("measurements/yard.csv", """
                device,firmware,insertion,frequency,level
                open ear,,,500,80
                open ear,,,1000,80
                ,2.1,1,500,60
                ,2.1,1,1000,60
                ,2.0,1,500,70
                ,2.0,1,1000,70
                """);
        write("measurements/harmonics.csv", "insertion,order,level\n1,1,90\n1,2,50\n");
        write("measurements/steady.csv", "time (s),level (dB SPL)\n0,60\n1,60\n2,60\n3,60\n");
    }

    private void write(String file, String text) throws IOException {
        Files.writeString(folder.resolve(file), text);
    }

    private FolderContents contents() throws Exception {
        return FolderContents.read(folder);
    }

    private static Scope scope(String products, String editions, String firmwares, String sessions) {
        return new Scope(names(products), names(editions), names(firmwares), names(sessions));
    }

    private static Set<String> names(String text) {
        return text.isEmpty() ? Set.of() : Set.of(text.split(","));
    }

    @Test
    void everyFileThatWasReadIsAnInputAndTargetsAreAmongThem() throws Exception {
        List<String> files = List.of(
                "claims/other.csv",
                "claims/skerry.yaml",
                "claims/target.csv",
                "claims/tide.yaml",
                "measurements/harmonics.csv",
                "measurements/quay.yaml",
                "measurements/steady.csv",
                "measurements/yard.csv",
                "measurements/yard.yaml");
        assertThat(contents().inputs()).extracting(Audit.Input::file).containsExactlyElementsOf(files);
        assertThat(contents().inputs()).isEqualTo(Inputs.hash(folder, files));
    }

    @Test
    void whatNarrowsNothingLeavesAllAndSaysNothing() throws Exception {
        FolderContents all = contents();
        assertThat(Scope.all().products(all.products())).isEqualTo(all.products());
        assertThat(Scope.all().sessions(all.sessions())).isEqualTo(all.sessions());
        assertThat(Scope.all().words()).isEmpty();
        Audit audit = all.judged(Scope.all(), TRIALS);
        assertThat(Scope.all().noted(audit)).isSameAs(audit);
        assertThat(verdicts(audit)).containsExactly("light pass", "deep pass", "shallow pass", "curve untested");
    }

    private static List<String> verdicts(Audit audit) {
        return audit.products().stream()
                .flatMap(p -> p.claims().stream())
                .map(c -> c.claim().id() + " " + c.verdict().word())
                .toList();
    }

    private static List<String> claims(List<Product> products) {
        return products.stream()
                .flatMap(p -> p.claims().stream())
                .map(Claim::id)
                .toList();
    }

    @Test
    void productsAndEditionsLeaveOutClaims() throws Exception {
        List<Product> all = contents().products();
        assertThat(claims(scope("Tide", "", "", "").products(all))).containsExactly("curve");
        assertThat(claims(scope("", "box,old", "", "").products(all))).containsExactly("light", "shallow");
        // A product of which no claim is left is left out.
        assertThat(scope("", "leaflet", "", "").products(all))
                .extracting(Product::name)
                .containsExactly("Tide");
    }

    /** One whose maker claims nothing stays where its claims are all in scope, and goes where they are narrowed. */
    @Test
    void aProductWithoutAnyClaimStaysUnlessClaimsAreNarrowed() throws Exception {
        List<Product> none = List.of(contents().products().get(0).withClaims(List.of()));
        assertThat(Scope.all().products(none)).isEqualTo(none);
        assertThat(scope("Skerry", "", "", "yard").products(none)).isEqualTo(none);
        assertThat(scope("", "box", "", "").products(none)).isEmpty();
        assertThat(scope("", "", "2.1", "").products(none)).isEmpty();
    }

    /** The box speaks of no firmware: it holds for all of them. */
    @Test
    void aFirmwareLeavesOutClaimsOfEditionsThatSpeakOfAnother() throws Exception {
        List<Product> all = contents().products();
        assertThat(claims(scope("", "", "2.1", "").products(all))).containsExactly("light", "deep", "curve");
        assertThat(claims(scope("", "web", "2.0", "").products(all))).isEmpty();
    }

    @Test
    void aFirmwareLeavesOutReadingsOfAnotherAndOfNoneButNoOpenEar() throws Exception {
        Session yard =
                scope("", "", "2.1", "yard").sessions(contents().sessions()).get(0);
        assertThat(yard.readings())
                .extracting(Reading::device, r -> r.get("firmware").orElse("none"))
                .containsExactlyInAnyOrder(tuple("open ear", "none"), tuple("Skerry", "2.1"));
        assertThat(yard.traces()).isEmpty();
        assertThat(yard.harmonics()).isEmpty();
        Session traced =
                scope("", "", "2.2", "yard").sessions(contents().sessions()).get(0);
        assertThat(traced.traces()).hasSize(1);
        assertThat(traced.harmonics()).isEmpty();
        List<Session> quay = scope("", "", "2.4", "quay").sessions(contents().sessions());
        assertThat(quay)
                .singleElement()
                .satisfies(s -> assertThat(s.figures())
                        .extracting(Figure::value)
                        .singleElement()
                        .satisfies(v -> assertThat(v.value()).isEqualTo(4.2)));
    }

    @Test
    void whatWasLeftOutOfTheReadingsIsSaidAtEveryClaim() throws Exception {
        Audit audit = contents().judged(scope("", "", "2.1,2.4", "yard"), TRIALS);
        assertThat(audit.sessions()).extracting(Session::id).containsExactly("yard");
        // The figure stands in the session that was left out.
        assertThat(verdicts(audit)).containsExactly("light untested", "deep pass", "curve untested");
        assertThat(audit.products())
                .allSatisfy(p -> assertThat(p.claims())
                        .allSatisfy(c -> assertThat(c.notes())
                                .startsWith(
                                        "other sessions than yard were left out of this audit on request",
                                        "other firmwares than 2.1, 2.4 were left out of this audit on request")));
        // What is said of a claim anyway stays.
        assertThat(audit.products().get(1).claims().get(0).notes()).hasSize(3).endsWith("same under all 2 rules");
    }

    @Test
    void claimsThatWereLeftOutAreNotSaid() throws Exception {
        Audit audit = contents().judged(scope("Skerry", "box", "", ""), TRIALS);
        assertThat(verdicts(audit)).containsExactly("light pass");
        assertThat(audit.products().get(0).claims().get(0).notes()).isEmpty();
    }

    @Test
    void inWordsWhatItLeaves() {
        assertThat(scope("Tide,Skerry", "box", "2.1", "yard").words())
                .isEqualTo("product Skerry, Tide, edition box, firmware 2.1, session yard");
        assertThat(scope("", "", "2.1,2.0", "").words()).isEqualTo("firmware 2.0, 2.1");
    }

    @Test
    void namesThatNothingBearsAreRefusedWithTheNamesThereAre() {
        assertThatThrownBy(() -> contents().judged(scope("Skery", "boxes,web", "2.2,1.0", "yart"), TRIALS))
                .isInstanceOf(InputException.class)
                .hasMessage("--product: no product is called 'Skery'; there is Skerry, Tide\n"
                        + "--edition: no edition is called 'boxes'; there is box, leaflet, old, web\n"
                        + "--firmware: no firmware is called '1.0'; there is 2.0, 2.1, 2.2, 2.3, 2.4\n"
                        + "--session: no session is called 'yart'; there is quay, yard");
    }

    @Test
    void whereNoneIsNamedItSaysSo() throws Exception {
        List<Session> bare = contents().sessions().stream()
                .map(s -> s.kept(r -> false, c -> false))
                .toList();
        assertThatThrownBy(() -> scope("", "", "2.1", "").check(List.of(), bare))
                .hasMessage("--firmware: no firmware is called '2.1'; none is named");
    }

    /** What the scope names is there: nothing to refuse. */
    @Test
    void namesThatThereAreAreTaken() throws Exception {
        FolderContents all = contents();
        for (String firmware : List.of("2.0", "2.1", "2.2", "2.3", "2.4")) {
            scope("Tide", "leaflet", firmware, "quay").check(all.products(), all.sessions());
        }
        assertThat(all.sessions()).hasSize(2);
    }

    /** Editions of one product, asked for of another: an audit of nothing would end well. */
    @Test
    void aScopeThatLeavesNoClaimIsRefused() throws Exception {
        FolderContents all = FolderContents.read(folder);
        assertThatThrownBy(() -> scope("Tide", "web", "", "").check(all.products(), all.sessions()))
                .hasMessage("--edition: nothing is left to judge: no claim is of what was asked for");
    }
}
