package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Objects;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher beside a jar that says one word. */
class LauncherTest {
    @TempDir
    Path folder;

    /** A jar that was copied no longer fits the archive beside it, and Java says so on standard output. */
    @Test
    void whatJavaHasToSayIsNoResult() throws IOException, InterruptedException {
        Path launcher = folder.resolve("ellwand");
        Path jar = folder.resolve("ellwand.jar");
        Path archive = folder.resolve("ellwand.jsa");
        Files.copy(Path.of("src/main/launcher/ellwand"), launcher);
        writeJar(jar);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        said(java, "-XX:+UseSerialGC", "-XX:ArchiveClassesAtExit=" + archive, "-jar", jar.toString());
        assertThat(archive).isNotEmptyFile();
        Files.setLastModifiedTime(jar, FileTime.fromMillis(0));
        assertThat(said("sh", launcher.toString(), "schema")).isEqualTo("schema");
    }

    private static String said(String... command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        return said;
    }

    private static void writeJar(Path jar) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Echo.class.getName());
        String entry = Echo.class.getName().replace('.', '/') + ".class";
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest);
                InputStream code =
                        Objects.requireNonNull(Echo.class.getClassLoader().getResourceAsStream(entry))) {
            out.putNextEntry(new JarEntry(entry));
            code.transferTo(out);
            out.closeEntry();
        }
    }

    /** Says what it is told. */
    static final class Echo {
        private Echo() {}

        public static void main(String[] args) {
            System.out.print(String.join(" ", args));
        }
    }
}
