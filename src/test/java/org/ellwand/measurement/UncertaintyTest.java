package org.ellwand.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.ellwand.amount.Unit;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UncertaintyTest {
    private static final String INSERTION = "  - {cause: insertion, size: 1.2 dB, shared by: insertion}";

    @TempDir
    Path path;

    private List<Cause> causes(String uncertainty) throws IOException, InputException {
        Session session = new Folder(path)
                .with("measurements/a.yaml", BadSessionTest.YAML.replace("uncertainty:\n" + INSERTION, uncertainty))
                .with("measurements/a.csv", BadSessionTest.CSV)
                .only();
        return ((Uncertainty.Declared) session.uncertainty()).causes();
    }

    @Test
    void aRangeHoldsItsEndsAndWhatIsBelowOrAboveDoesNot() throws IOException, InputException {
        Cause cause = causes("""
                        uncertainty:
                          - cause: tube placement
                            size: [{bands: above 8 kHz, size: 3 dB}, {bands: below 3 kHz, size: 0.4 dB},
                                   {bands: 3 to 5 kHz, size: 1.0 dB}, {bands: 6.3 to 8 kHz, size: 2.5 dB}]
                            shared by: insertion
                        """.strip()).get(0);
        assertThat(cause.sizeAt(2500)).isEqualTo(0.4);
        assertThat(cause.sizeAt(3150)).isEqualTo(1.0);
        assertThat(cause.sizeAt(5000)).isEqualTo(1.0);
        assertThat(cause.sizeAt(6300)).isEqualTo(2.5);
        assertThat(cause.sizeAt(8000)).isEqualTo(2.5);
        assertThat(cause.sizeAt(10000)).isEqualTo(3);
    }

    @Test
    void timesAndIndependence() throws IOException, InputException {
        List<Cause> causes = causes("""
                uncertainty:
                  - {cause: reading, size: 0.5 dB, shared by: reading, across bands: independent}
                  - {cause: timing, size: 0.004 s, shared by: reading}""");
        assertThat(causes.get(0).independentAcrossBands()).isTrue();
        assertThat(causes.get(1).independentAcrossBands()).isFalse();
        assertThat(causes.get(1).unit()).isEqualTo(Unit.MILLISECOND);
        assertThat(causes.get(1).sizeAt(0)).isEqualTo(4);
    }

    /** Common practice, no source; held here against a slip of the pen only. */
    @Test
    void theTypicalProbeTube() throws IOException, InputException {
        List<Cause> causes = causes("uncertainty: typical probe tube");
        assertThat(causes)
                .extracting(c -> c.name() + " " + c.sharedBy() + " " + c.sizeAt(250) + " " + c.sizeAt(1000) + " "
                        + c.sizeAt(3150) + " " + c.sizeAt(4000) + " " + c.sizeAt(6300) + " " + c.sizeAt(8000))
                .containsExactly(
                        "calibration SESSION 0.3 0.3 0.4 0.5 0.8 1.0",
                        "tube shift INSERTION 0.0 0.0 0.15 0.35 0.8 1.5",
                        "insertion INSERTION 3.0 2.0 1.8 2.0 2.5 3.0",
                        "head and loudspeaker position READING 0.3 0.4 0.7 0.9 1.2 1.5",
                        "averaging and rounding READING 0.4 0.3 0.3 0.3 0.3 0.3",
                        "ear EAR 4.0 3.0 3.0 3.5 4.0 4.5",
                        "unit UNIT 1.0 0.7 0.7 1.0 1.2 1.5");
        assertThat(causes.stream().filter(Cause::independentAcrossBands))
                .extracting(Cause::name)
                .containsExactly("averaging and rounding");
        assertThat(causes.get(0).sizeAt(315)).isEqualTo(0.3);
        assertThat(causes.get(2).sizeAt(315)).isEqualTo(2.0);
    }
}
