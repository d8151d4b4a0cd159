package org.ellwand.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.ellwand.input.InputException;
import org.ellwand.input.Problem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Broken files of every kind: each is read or refused with its place, within seconds, and nothing else happens. How many are
 * tried is set by {@code -Dfuzz.inputs}, where they begin by {@code -Dfuzz.seed}, one reader alone by
 * {@code -Dfuzz.target=CLAIMS}, the seconds that one may take by {@code -Dfuzz.patience}; what fails is kept in {@code target/fuzz}.
 */
@Tag("slow")
class ReadersTest {
    private static final int INPUTS = Integer.getInteger("fuzz.inputs", 200);
    private static final long SEED = Long.getLong("fuzz.seed", 1);
    private static final String ONLY = System.getProperty("fuzz.target", "");
    private static final int PATIENCE_S = Integer.getInteger("fuzz.patience", 20);

    @TempDir
    private Path folder;

    private int refused;

    @ParameterizedTest
    @EnumSource
    void readsOrRefuses(Target target) throws Exception {
        assumeTrue(ONLY.isEmpty() || target.name().equals(ONLY));
        target.prepare(folder);
        Mutator mutator = new Mutator(SEED, target.seeds());
        ExecutorService reader = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task);
            thread.setDaemon(true);
            return thread;
        });
        for (int i = 0; i < INPUTS; i++) {
            byte[] input = mutator.next();
            try {
                CompletableFuture.runAsync(() -> read(target, input), reader).get(PATIENCE_S, TimeUnit.SECONDS);
            } catch (ExecutionException e) {
                throw new AssertionError("input " + i + ", kept in " + kept(target, i, input), e.getCause());
            } catch (TimeoutException e) {
                throw new AssertionError("hangs on input " + i + ", kept in " + kept(target, i, input), e);
            }
        }
        reader.shutdownNow();
        // All refused or none would mean that nothing was tried.
        assertThat(refused).isBetween(INPUTS / 20, INPUTS);
    }

    private void read(Target target, byte[] input) {
        try {
            Files.write(folder.resolve(target.file()), input);
            target.read(folder, input);
        } catch (InputException e) {
            refused++;
            // A message that names no place helps nobody.
            assertThat(e.problems()).isNotEmpty().allSatisfy(p -> {
                assertThat(p.place().file()).isNotEmpty();
                assertThat(p.text()).isNotBlank().hasSizeLessThan(Problem.LONGEST + 100);
            });
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Path kept(Target target, int number, byte[] input) throws IOException {
        Path file = Files.createDirectories(Path.of("target/fuzz")).resolve(target + "-" + number);
        Files.write(file, input);
        String text = new String(input, StandardCharsets.UTF_8);
        return text.isEmpty() ? file : file.toAbsolutePath();
    }
}
