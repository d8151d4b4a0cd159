package org.ellwand.measurement;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which size a harmonic takes of a cause whose sizes differ by frequency, only the tone's frequency tells. */
class HarmonicsNeedTheirToneTest {
    private static final String DIFFERS =
            "{cause: tube, size: [{bands: below 3 kHz, size: 0.4 dB}, {bands: above 3 kHz, size: 2 dB}], shared by: reading}";

    @TempDir
    Path folder;

    private void read(String cause, String tone) throws Exception {
        Files.createDirectories(folder.resolve("measurements"));
        Files.writeString(folder.resolve("measurements/h.csv"), "order,level\n1,90\n2,50\n");
        Files.writeString(
                folder.resolve("measurements/a.yaml"),
                "session: a\nproduct: Skerry\nuncertainty:\n  - " + cause
                        + "\ndata:\n  - {file: h.csv, layout: harmonics" + tone + "}\n");
        SessionReader.readAll(folder);
    }

    @Test
    void withoutItNoSizeIsTaken() {
        assertThatThrownBy(() -> read(DIFFERS, ""))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "measurements/a.yaml:6:5: 'fundamental' is missing: the size of 'tube' differs by frequency,"
                                + " so give the tone's, as 'fundamental: 500 Hz'");
    }

    @Test
    void withItOrWithOneSizeAllIsTold() {
        assertThatCode(() -> read(DIFFERS, ", fundamental: 500 Hz")).doesNotThrowAnyException();
        assertThatCode(() -> read("{cause: tube, size: 0.4 dB, shared by: reading}", ""))
                .doesNotThrowAnyException();
    }
}
