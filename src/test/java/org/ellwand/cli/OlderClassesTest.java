package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What the build does to libraries compiled for Java 5, with one of them. */
class OlderClassesTest {
    private static final int MAJOR_VERSION_AT = 6;
    private static final int JAVA_6 = 50;

    @TempDir
    Path temp;

    private Path jar;
    private Map<ZipEntry, byte[]> before;

    @BeforeEach
    void renew() throws Exception {
        Path library = Path.of(CommandLine.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        jar = Files.copy(library, temp.resolve("library.jar"));
        before = entries(jar);
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "src/main/launcher/OlderClasses.java",
                        jar.toString())
                .inheritIO()
                .start();
        assertThat(program.waitFor()).isZero();
    }

    @Test
    void noneIsOlderThanJava6AndOnlyClassesAreChanged() throws IOException {
        Map<ZipEntry, byte[]> after = entries(jar);
        assertThat(after.keySet().stream().map(ZipEntry::getName))
                .containsExactlyElementsOf(
                        before.keySet().stream().map(ZipEntry::getName).toList());
        assertThat(after.keySet().stream().map(ZipEntry::getTime))
                .containsExactlyElementsOf(
                        before.keySet().stream().map(ZipEntry::getTime).toList());
        assertThat(majorVersions(before)).anyMatch(version -> version < JAVA_6);
        assertThat(majorVersions(after)).isNotEmpty().allMatch(version -> version >= JAVA_6);
        assertThat(others(after)).containsExactlyElementsOf(others(before));
    }

    /** Initializing a class has it verified, by its stack maps. */
    @Test
    void theMachineTakesEveryClass() throws IOException {
        try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, null)) {
            for (ZipEntry entry : classes(before)) {
                String name = entry.getName().replace('/', '.').replaceAll("\\.class$", "");
                assertThatCode(() -> Class.forName(name, true, loader)).as(name).doesNotThrowAnyException();
            }
        }
    }

    private static Map<ZipEntry, byte[]> entries(Path jar) throws IOException {
        Map<ZipEntry, byte[]> entries = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(jar))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                entries.put(entry, in.readAllBytes());
            }
        }
        return entries;
    }

    private static boolean isClass(ZipEntry entry) {
        return entry.getName().endsWith(".class") && !entry.getName().endsWith("module-info.class");
    }

    private static List<ZipEntry> classes(Map<ZipEntry, byte[]> entries) {
        return entries.keySet().stream().filter(OlderClassesTest::isClass).toList();
    }

    private static List<Integer> majorVersions(Map<ZipEntry, byte[]> entries) {
        return classes(entries).stream()
                .map(entry -> (int) ByteBuffer.wrap(entries.get(entry)).getShort(MAJOR_VERSION_AT))
                .toList();
    }

    private static List<byte[]> others(Map<ZipEntry, byte[]> entries) {
        return entries.entrySet().stream()
                .filter(entry -> !isClass(entry.getKey()))
                .map(Map.Entry::getValue)
                .toList();
    }
}
