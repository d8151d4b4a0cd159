package org.ellwand.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.AuditRecord;
import org.ellwand.audit.AuditRecordReader;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Scope;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures of two audits; battery, hours and units are invented. */
class FigureShiftTest {
    private static final String ONE = "  - {of: battery life, value: %s, uncertainty: 0.5 h}\n";

    @TempDir
    Path temp;

    private AuditRecord record(String name, String session, String figures, String more) throws Exception {
        Path folder = temp.resolve(name);
        Files.createDirectories(folder.resolve("claims"));
        Files.createDirectories(folder.resolve("measurements"));
        Files.writeString(folder.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims: [{id: life, edition: box, quote: "18 hours.", stated: {quantity: figure, of: battery life, limit: at least 18 h%s}}]
                """.formatted(more));
        Files.writeString(
                folder.resolve("measurements/bench.yaml"),
                "session: " + session + "\nproduct: Skerry\nfigures:\n" + figures);
        return AuditRecordReader.read(
                AuditJson.write(FolderContents.read(folder).judged(Scope.all(), 1000)), "audit.json");
    }

    private static Shift shift(AuditRecord first, AuditRecord second) {
        return new Comparer(Optional.empty())
                .compare(first, second)
                .products()
                .get(0)
                .claims()
                .get(0)
                .deciding()
                .orElseThrow()
                .shift();
    }

    /** √(0.5² + 0.5²) = 0.7071 h; 2 (1 − Φ(0.2/0.7071)) = 0.7773. */
    @Test
    void twoReadingsOfAFigureAreUncertainByBoth() throws Exception {
        AuditRecord first = record("a", "monday", ONE.formatted("19.2 h"), "");
        Shift other = shift(first, record("b", "friday", ONE.formatted("19.0 h"), ""));
        assertThat(other.value()).isCloseTo(-0.2, within(1e-9));
        assertThat(other.standardUncertainty().orElseThrow()).isCloseTo(0.70711, within(1e-5));
        assertThat(other.chance().orElseThrow()).isCloseTo(0.7773, within(1e-4));
        // A figure that reads otherwise in a sitting of the same name was read again.
        assertThat(shift(first, record("c", "monday", ONE.formatted("19.0 h"), ""))
                        .standardUncertainty()
                        .orElseThrow())
                .isCloseTo(0.70711, within(1e-5));
        assertThat(shift(first, first).standardUncertainty()).hasValue(0);
    }

    /** 19.0, 19.2, 19.4 h and 0.3 h less each: the means scatter by 0.2/√3 h each, the difference by 0.1633 h. */
    @Test
    void meansOverUnitsScatterByBoth() throws Exception {
        Shift shift = shift(
                record("a", "monday", units(19.0, 19.2, 19.4), ", units: mean"),
                record("b", "friday", units(18.7, 18.9, 19.1), ", units: mean"));
        assertThat(shift.value()).isCloseTo(-0.3, within(1e-9));
        assertThat(shift.isMoreThanNoise(0.95)).isFalse();
        // The scales of two t of two degrees each, as squares: the number of degrees makes it wider than 0.1633 h.
        assertThat(shift.standardUncertainty().orElseThrow()).isGreaterThan(0.1632);
    }

    private static String units(double... hours) {
        StringBuilder figures = new StringBuilder();
        for (int i = 0; i < hours.length; i++) {
            figures.append("  - {of: battery life, value: ")
                    .append(hours[i])
                    .append(" h, uncertainty: 0.1 h, unit: SN-")
                    .append(i)
                    .append("}\n");
        }
        return figures.toString();
    }
}
