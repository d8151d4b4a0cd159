package org.ellwand.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.ellwand.scale.Lot;
import org.ellwand.scale.LotFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is left to measure of a lot of an invented earplug. */
class LotPlanTest {
    private static final int UNITS = 12;

    @TempDir
    Path temp;

    private Plan plan() throws Exception {
        // The weakest plugs lie so near 5 dB that three insertions do not tell.
        String claims = LotFolder.CLAIMS.replace("at least 8 dB", "at least 5 dB");
        LotFolder.write(temp, claims, List.of(new Lot("2.0", 1, UNITS, 0, 1)));
        List<Product> products = new ClaimsReader(Quantities.forms(), Set.of()).readAll(temp);
        return Plan.of(new Auditor(new AuditOptions(1000)).audit(products, SessionReader.readAll(temp), List.of()))
                .get(0);
    }

    /** To go through all readings of a lot anew for each of its units would take a hundred times as long for ten times the units. */
    @Test
    void whatIsReadOfEveryUnitIsPutTogetherOnce() throws Exception {
        List<Sitting> sittings = plan().sittings();
        assertThat(sittings).hasSize(UNITS);
        Sitting first = sittings.get(0);
        assertThat(sittings).allSatisfy(sitting -> {
            assertThat(sitting.readings()).isSameAs(first.readings());
            assertThat(sitting.bands()).isSameAs(first.bands());
        });
    }

    @Test
    void everyUnitHasItsSitting() throws Exception {
        assertThat(plan().sittings())
                .extracting(sitting -> sitting.defaults().get("unit"))
                .doesNotHaveDuplicates()
                .hasSize(UNITS);
    }
}
