package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An audit that is interrupted at any moment leaves the earlier report or the new one, whole, and nothing beside it. */
@Tag("slow")
class InterruptedTest {
    private static final int KILLS = 12;

    @TempDir
    private Path scratch;

    @Test
    void leavesAWholeReportAndNothingElse() throws Exception {
        Path report = scratch.resolve("report");
        assertThat(audit(report, "--dated", "2026-01-01").waitFor()).isZero();
        SortedMap<String, byte[]> earlier = files(report);
        long begun = System.nanoTime();
        assertThat(audit(report, "--dated", "2026-02-02").waitFor()).isZero();
        long wholeMs = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
        SortedMap<String, byte[]> later = files(report);
        assertThat(audit(report, "--dated", "2026-01-01").waitFor()).isZero();
        SplittableRandom random = new SplittableRandom(1);
        for (int kill = 0; kill < KILLS; kill++) {
            // Half of them where the files are being written.
            long after = kill % 2 == 0 ? random.nextLong(wholeMs) : wholeMs * (70 + random.nextLong(30)) / 100;
            Process audit = audit(report, "--dated", "2026-02-02");
            if (!audit.waitFor(after, TimeUnit.MILLISECONDS)) {
                new ProcessBuilder("kill", "-INT", Long.toString(audit.pid()))
                        .start()
                        .waitFor();
            }
            assertThat(audit.waitFor()).as("exit code").isIn(0, 130);
            assertThat(files(report))
                    .as("after %d ms", after)
                    .satisfiesAnyOf(
                            found -> assertThat(found).containsExactlyEntriesOf(earlier),
                            found -> assertThat(found).containsExactlyEntriesOf(later));
            try (Stream<Path> beside = Files.list(scratch)) {
                assertThat(beside).containsExactly(report);
            }
        }
    }

    private static Process audit(Path report, String... options) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "org.ellwand.cli.Main",
                "audit",
                ".",
                "--out",
                report.toString()));
        command.addAll(List.of(options));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static SortedMap<String, byte[]> files(Path folder) throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }
}
