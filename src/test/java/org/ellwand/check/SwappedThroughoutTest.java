package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two settings of an invented plug, 22.5 and 13 dB, named the wrong way round throughout. */
class SwappedThroughoutTest {
    private static final int SESSIONS = 1000;
    private static final int MOST = 4;

    @TempDir
    Path temp;

    private List<Product> claims(String flood, String ebb) throws Exception {
        Files.createDirectories(temp.resolve("claims"));
        Files.writeString(temp.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                assumed: {level: all, bands: 125 Hz to 8 kHz, statistic: mean}
                claims:
                  - {id: flood, edition: box, quote: Flood, stated: {quantity: attenuation, setting: flood, limit: %s}}
                  - {id: ebb, edition: box, quote: Ebb, stated: {quantity: insertion gain, setting: ebb, limit: %s}}
                """.formatted(flood, ebb));
        return new ClaimsReader(Quantities.forms(), Set.of()).readAll(temp);
    }

    /** As it was measured, its order not stated. */
    private static Session sound(int i) {
        return SoundSittings.unordered(Integer.toString(i));
    }

    private static Session swapped(Session session) {
        List<CurveReading> readings = session.readings().stream()
                .map(reading -> reading.get("setting")
                        .map(setting -> new CurveReading(
                                reading.conditions().with("setting", setting.equals("flood") ? "ebb" : "flood"),
                                reading.values(),
                                reading.spectrum(),
                                reading.place()))
                        .orElse(reading))
                .toList();
        return session.withReadings(readings);
    }

    @Test
    void whatIsClaimedStrongerAndIsLouderIsNoted() throws Exception {
        List<Product> products = claims("20 to 24 dB", "-15 to -11 dB");
        List<Finding> findings = SwappedThroughout.in(swapped(sound(0)), products);
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).consequence()).isEqualTo(Finding.Consequence.NOTED);
        assertThat(findings.get(0).text())
                .startsWith("flood, which is claimed to take more off than ebb, is louder by 9");
        assertThat(Inspection.of(List.of(swapped(sound(0)))).against(products).findings())
                .extracting(finding -> finding.remark().key())
                .contains("settings-against-claims");
    }

    @Test
    void soundSessionsAreNotAccused() throws Exception {
        List<Product> products = claims("at least 20 dB", "at most -11 dB");
        int accused = 0;
        for (int i = 0; i < SESSIONS; i++) {
            accused += SwappedThroughout.in(sound(i), products).isEmpty() ? 0 : 1;
        }
        assertThat(accused).isLessThanOrEqualTo(MOST);
        assertThat(SwappedThroughout.in(swapped(sound(1)), products)).isNotEmpty();
    }

    @Test
    void claimsThatDoNotTellAnOrderTellNothing() throws Exception {
        assertThat(SwappedThroughout.in(swapped(sound(0)), claims("at least 10 dB", "-25 to -11 dB")))
                .isEmpty();
    }
}
