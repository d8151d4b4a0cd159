package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The script that starts the program, beside a jar that says one word. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
    private static final Path JAVA_HOME = Path.of(System.getProperty("java.home"));

    /** What the jar runs. */
    static final class Word {
        private Word() {}

        public static void main(String[] args) {
            System.out.println("word");
        }
    }

    /** A copied jar is newer than the archive of its classes. What Java says of that is no result and may not stand among them. */
    @Test
    void anArchiveThatDoesNotFitIsNotToldAmongResults(@TempDir Path folder) throws Exception {
        Path jar = folder.resolve("ellwand.jar");
        writeJar(jar);
        Path archive = folder.resolve("ellwand.jsa");
        ran(
                folder,
                JAVA_HOME.resolve("bin/java").toString(),
                "-XX:ArchiveClassesAtExit=" + archive,
                "-jar",
                jar.toString());
        assertThat(archive).exists();
        Files.setLastModifiedTime(jar, FileTime.fromMillis(0));
        Files.copy(Path.of("src/main/launcher/ellwand"), folder.resolve("ellwand"));

        assertThat(ran(folder, "/bin/sh", folder.resolve("ellwand").toString())).isEqualTo("word\n");
    }

    private static void writeJar(Path jar) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Word.class.getName());
        String entry = Word.class.getName().replace('.', '/') + ".class";
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream zipped = new JarOutputStream(out, manifest);
                InputStream code = LauncherTest.class.getClassLoader().getResourceAsStream(entry)) {
            zipped.putNextEntry(new JarEntry(entry));
            code.transferTo(zipped);
            zipped.closeEntry();
        }
    }

    /** What a command wrote to standard output. */
    private static String ran(Path folder, String... command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(List.of(command)))
                .directory(folder.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("JAVA_HOME", JAVA_HOME.toString());
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        return said;
    }
}
