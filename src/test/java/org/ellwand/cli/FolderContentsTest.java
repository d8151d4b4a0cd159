package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Scope;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The folder that comes with the project, read, narrowed and judged. */
class FolderContentsTest {
    private static final Path DEMO = Path.of("");
    private static final int TRIALS = 1000;

    private static FolderContents contents;

    @BeforeAll
    static void read() throws Exception {
        contents = FolderContents.read(DEMO);
    }

    @Test
    void everyFileOfTheInputFoldersIsAnInput() throws IOException {
        try (Stream<Path> claims = Files.list(DEMO.resolve("claims"));
                Stream<Path> measurements = Files.list(DEMO.resolve("measurements"))) {
            List<String> files = Stream.concat(claims, measurements)
                    .map(Path::toString)
                    .filter(name -> name.matches(".*\\.(yaml|csv)"))
                    .sorted()
                    .toList();
            assertThat(contents.inputs().stream().map(Audit.Input::file)).containsExactlyElementsOf(files);
        }
    }

    @Test
    void theSameFolderGivesTheSameRecord() throws Exception {
        byte[] first = AuditJson.write(contents.judged(Scope.all(), TRIALS));
        assertThat(AuditJson.write(FolderContents.read(DEMO).judged(Scope.all(), TRIALS)))
                .isEqualTo(first);
    }

    @Test
    void aScopeLeavesOutTheOtherProductsAndEditions() throws Exception {
        Audit audit = contents.judged(new Scope(Set.of("Skerry"), Set.of("box-2025"), Set.of(), Set.of()), TRIALS);

        assertThat(audit.products()).hasSize(1);
        assertThat(audit.products().get(0).claims())
                .isNotEmpty()
                .allMatch(claim -> claim.claim().edition().id().equals("box-2025"))
                .allMatch(claim -> claim.notes().stream().noneMatch(note -> note.contains("on request")));
    }

    @Test
    void aClaimIsJudgedAsItIsWithoutTheOthers() throws Exception {
        Scope box = new Scope(Set.of("Skerry"), Set.of("box-2025"), Set.of(), Set.of());
        List<ClaimAudit> all = contents.judged(Scope.all(), TRIALS).products().stream()
                .filter(product -> product.product().name().equals("Skerry"))
                .flatMap(product -> product.claims().stream())
                .filter(claim -> claim.claim().edition().id().equals("box-2025"))
                .toList();
        assertThat(contents.judged(box, TRIALS).products().get(0).claims()).isEqualTo(all);
    }

    @Test
    void everyClaimSaysThatSessionsWereLeftOut() throws Exception {
        Audit audit =
                contents.judged(new Scope(Set.of("Skerry"), Set.of(), Set.of(), Set.of("skerry-crew-02")), TRIALS);

        assertThat(audit.sessions()).hasSize(1);
        assertThat(audit.products().get(0).claims())
                .isNotEmpty()
                .allSatisfy(claim -> assertThat(claim.notes())
                        .contains("other sessions than skerry-crew-02 were left out of this audit on request"));
    }

    @Test
    void aFirmwareLeavesOutWhatWasMeasuredWithAnotherOrWithNone() {
        Scope scope = new Scope(Set.of(), Set.of(), Set.of("2.1"), Set.of());

        assertThat(scope.sessions(contents.sessions()))
                .allSatisfy(session -> assertThat(session.readings())
                        .filteredOn(reading -> reading.isInPlace())
                        .allMatch(reading ->
                                reading.get("firmware").orElse("none").equals("2.1")))
                .anySatisfy(session -> assertThat(session.readings()).anyMatch(reading -> reading.isInPlace()));
    }

    @Test
    void aNameThatNothingBearsIsRefusedWithTheNamesThereAre() {
        Scope scope = new Scope(Set.of("Sherry"), Set.of(), Set.of(), Set.of("yard"));

        assertThatThrownBy(() -> contents.judged(scope, TRIALS))
                .isInstanceOf(InputException.class)
                .hasMessage("--product: no product is called 'Sherry'; there is Skerry, Skerry Tide\n"
                        + "--session: no session is called 'yard'; there is bench, skerry-crew-01, skerry-crew-02,"
                        + " tide-crew-01, tide-crew-02");
    }
}
