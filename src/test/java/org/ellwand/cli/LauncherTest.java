package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shell script that starts the program, with a small program in the place of Ellwand. */
class LauncherTest {
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

    @TempDir
    Path temp;

    private Path launcher;
    private Path jar;

    @BeforeEach
    void install() throws IOException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "there is no Unix shell");
        launcher = Files.copy(Path.of("src/main/launcher/ellwand"), temp.resolve("ellwand"));
        jar = temp.resolve("ellwand.jar");
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Echo.class.getName());
        String echo = Echo.class.getName().replace('.', '/') + ".class";
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest);
                InputStream bytes = Echo.class.getClassLoader().getResourceAsStream(echo)) {
            out.putNextEntry(new ZipEntry(echo));
            out.write(bytes.readAllBytes());
        }
    }

    /** Prints its words. */
    public static final class Echo {
        private Echo() {}

        /** @param words printed, one a line, where such a path can be */
        public static void main(String[] words) {
            PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
            for (String word : words) {
                out.println(Path.of(word));
            }
        }
    }

    /** Copied or moved, the archive of classes no longer fits; the virtual machine says so on standard output, amid the results. */
    @Test
    void anArchiveThatDoesNotFitIsPassedOverInSilence() throws Exception {
        run(List.of(
                JAVA.toString(),
                "-Xlog:disable",
                "-XX:ArchiveClassesAtExit=" + temp.resolve("ellwand.jsa"),
                "-jar",
                jar.toString()));
        assumeTrue(Files.exists(temp.resolve("ellwand.jsa")), "this Java makes no archive");
        Files.setLastModifiedTime(jar, FileTime.fromMillis(0));

        assertThat(launched("C.UTF-8", "yard")).isEqualTo("yard\n");
    }

    /** A container mostly has no locale at all, and a maker's folder may have any letters. */
    @Test
    void aNameMayHaveAnyLettersWhateverTheLocale() throws Exception {
        assertThat(launched("C.UTF-8", "größe")).isEqualTo("größe\n");
        assertThat(launched("POSIX", "größe")).isEqualTo("größe\n");
        assertThat(launched("C", "größe")).isEqualTo("größe\n");
        assertThat(launched("xx_XX.UTF-8", "größe")).isEqualTo("größe\n");
        assertThat(launched("", "größe")).isEqualTo("größe\n");
    }

    /** The word goes by way of a script, since this test may itself run where no such word can be passed on. */
    private String launched(String locale, String word) throws Exception {
        Path script = temp.resolve("go.sh");
        Files.writeString(
                script,
                "unset LANG LC_CTYPE LC_ALL\n" + (locale.isEmpty() ? "" : "export LC_ALL=" + locale + "\n")
                        + "sh \"$1\" " + word + "\n");
        return run(List.of("/bin/sh", script.toString(), launcher.toString()));
    }

    /** What a command prints on standard output. */
    private static String run(List<String> command) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        Process process = builder.start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(printed).isZero();
        return printed;
    }
}
