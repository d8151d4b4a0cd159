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

    /** Whether its hash was begun while other files were read, or not. */
    @Test
    void aFileThatIsBegunEarlyHasTheSameDigestAndIsTheSameError() throws IOException {
        Files.writeString(folder.resolve("a.csv"), "abc");
        Hashing hashing = new Hashing(folder);
        hashing.begin("a.csv");
        hashing.begin("a.csv");
        hashing.begin("gone.csv");
        assertThat(hashing.of(List.of("a.csv"))).isEqualTo(Inputs.hash(folder, List.of("a.csv")));
        assertThatThrownBy(() -> hashing.of(List.of("a.csv", "gone.csv"))).isInstanceOf(NoSuchFileException.class);
    }

    @Test
    void aFileLargerThanWhatIsReadAtOnce() throws IOException {
        Files.write(folder.resolve("zeros.csv"), new byte[200_000]);
        // head -c 200000 /dev/zero | sha256sum
        assertThat(Inputs.hash(folder, List.of("zeros.csv")).get(0).sha256())
                .isEqualTo("4cbbd9be0cba685835755f827758705db5a413c5494c34262cd25946a73e7582");
    }
}
