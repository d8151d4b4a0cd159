package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InputsTest {
    @TempDir
    Path folder;

    /** "abc" and the empty message: FIPS 180-4's example digests, as NIST publishes them (from memory). */
    @Test
    void eachFileIsNamedOnceSortedWithItsDigest() throws IOException {
        Files.createDirectory(folder.resolve("claims"));
        Files.writeString(folder.resolve("claims/b.yaml"), "abc");
        Files.writeString(folder.resolve("a.csv"), "");

        assertThat(Inputs.hash(folder, List.of("claims/b.yaml", "a.csv", "claims/b.yaml")))
                .containsExactly(
                        new Audit.Input("a.csv", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"),
                        new Audit.Input(
                                "claims/b.yaml", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
    }

    @Test
    void aFileThatIsGoneIsAnError() {
        assertThatThrownBy(() -> Inputs.hash(folder, List.of("gone.csv"))).isInstanceOf(NoSuchFileException.class);
    }
}
