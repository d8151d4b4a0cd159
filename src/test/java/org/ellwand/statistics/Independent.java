package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** General statistics software that answers the same questions by its own routines, where it is installed. */
enum Independent {
    /** Tried with SciPy 1.17. */
    PYTHON("python3 with scipy", "independent.py", "python3", "import scipy.stats, scipy.integrate"),
    /** Tried with R 4.2; base R is all it takes. */
    R("R (Rscript)", "independent.R", "Rscript", "stopifnot(is.function(pt))");

    private static final Path SCRIPTS = Path.of("src/test/resources/org/ellwand/statistics");

    private final String software;
    private final String script;
    private final String command;
    private final String probe;
    private Optional<Boolean> installed = Optional.empty();

    Independent(String software, String script, String command, String probe) {
        this.software = software;
        this.script = script;
        this.command = command;
        this.probe = probe;
    }

    /** The answers to questions, a name and its numbers each; skips the test where the software is not installed. */
    List<Double> answers(List<String> questions) {
        assumeTrue(isInstalled(), software + " is not installed: nothing independent to compare with");
        String printed = printed(String.join("\n", questions) + "\n");
        List<Double> answers = printed.lines().map(Double::valueOf).toList();
        assertThat(answers).as(printed).hasSameSizeAs(questions);
        return answers;
    }

    private synchronized boolean isInstalled() {
        if (installed.isEmpty()) {
            installed = Optional.of(isAnswering());
        }
        return installed.get();
    }

    private boolean isAnswering() {
        try {
            return run(List.of(this == R ? "-e" : "-c", probe), "").code() == 0;
        } catch (IOException notFound) {
            return false;
        }
    }

    private String printed(String input) {
        try {
            Ended ended = run(List.of(SCRIPTS.resolve(script).toString()), input);
            assertThat(ended.code()).as(ended.warned()).isZero();
            return ended.printed();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What software warns of on its second output is kept for the case that it fails. */
    private record Ended(int code, String printed, String warned) {}

    private Ended run(List<String> arguments, String input) throws IOException {
        Path questions = Files.writeString(Files.createTempFile("questions", ".txt"), input);
        Path warnings = Files.createTempFile("warnings", ".txt");
        try {
            Process process = new ProcessBuilder(Stream.concat(Stream.of(command), arguments.stream())
                            .toList())
                    .redirectInput(questions.toFile())
                    .redirectError(warnings.toFile())
                    .start();
            String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return new Ended(process.waitFor(), printed, Files.readString(warnings));
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        } finally {
            Files.delete(questions);
            Files.delete(warnings);
        }
    }
}
