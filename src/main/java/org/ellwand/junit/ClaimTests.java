package org.ellwand.junit;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.ProductAudit;
import org.ellwand.audit.Scope;
import org.ellwand.audit.Verdict;
import org.ellwand.claim.Waiver;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;

/**
 * The claims of a folder as dynamic tests of JUnit 5: one that is true passes, one that is not fails, one that is marginal or
 * untested is aborted with its reason (a skipped test), and so is a failing one whose waiver holds.
 *
 * <p>JUnit is not brought along: this is for a test suite that has it.
 */
public final class ClaimTests {
    private final LocalDate today;

    private ClaimTests(LocalDate today) {
        this.today = today;
    }

    /**
     * {@return a test for each claim, named {@code product: claim}}
     *
     * @param folder holds {@code claims/} and {@code measurements/}
     * @param today decides whether a waiver still holds
     * @throws InputException where the folder's files cannot be used
     * @throws IOException where they cannot be read
     */
    public static Stream<DynamicTest> of(Path folder, LocalDate today) throws InputException, IOException {
        Audit audit = FolderContents.read(folder).judged(Scope.all(), AuditOptions.DEFAULT_TRIALS);
        ClaimTests tests = new ClaimTests(today);
        return audit.products().stream()
                .flatMap(product -> product.claims().stream().map(claim -> tests.test(product, claim)));
    }

    private DynamicTest test(ProductAudit product, ClaimAudit claim) {
        String name = product.product().name() + ": " + claim.claim().id();
        return DynamicTest.dynamicTest(name, () -> check(claim));
    }

    private void check(ClaimAudit claim) {
        if (claim.verdict() == Verdict.PASS) {
            return;
        }
        Optional<Waiver> waiver = claim.claim().waiver();
        boolean fails = waiver.isPresent() ? waiver.get().isExpiredOn(today) : claim.verdict() == Verdict.FAIL;
        String message = claim.verdict().word()
                + claim.plain().map(Judgement::text).map(text -> ": " + text).orElse("")
                + claim.reason().map(reason -> ": " + reason).orElse("")
                + waiver.map(w -> "; " + w.words()).orElse("");
        if (fails) {
            Assertions.fail(message);
        }
        Assumptions.abort(message);
    }
}
