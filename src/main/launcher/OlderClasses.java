import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Puts the classes of a jar that were compiled for Java 5 or earlier into the form of Java 6: the same code, with the stack
 * maps that spare the machine an analysis. An archive of classes takes no older ones, so that they would be read, checked and
 * linked anew at every start. Everything else in the jar stays as it is, in its order and with its times.
 *
 * <p>Run by the build: {@code java -cp asm.jar OlderClasses.java target/ellwand.jar}
 */
final class OlderClasses {
    private static final int JAVA_6 = Opcodes.V1_6;

    private final ClassLoader libraries;

    private OlderClasses(ClassLoader libraries) {
        this.libraries = libraries;
    }

    public static void main(String[] args) throws IOException {
        Path jar = Path.of(args[0]);
        Path renewed = Path.of(args[0] + ".renewed");
        // No parent: what a class is related to is asked of the jar and of Java, not of what this program runs on.
        try (URLClassLoader libraries = new URLClassLoader(new URL[] {jar.toUri().toURL()}, null)) {
            Files.write(renewed, new OlderClasses(libraries).renewed(Files.readAllBytes(jar)));
        }
        Files.move(renewed, jar, StandardCopyOption.REPLACE_EXISTING);
    }

    private byte[] renewed(byte[] jar) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(jar.length);
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(jar));
                ZipOutputStream to = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                byte[] content = from.readAllBytes();
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTime(entry.getTime());
                to.putNextEntry(same);
                to.write(isOlder(entry.getName(), content) ? renewedClass(content) : content);
            }
        }
        return bytes.toByteArray();
    }

    /** JVMS 17, 4.1: bytes 6 and 7 of a class file are its major version. */
    private static boolean isOlder(String name, byte[] content) {
        return name.endsWith(".class") && ByteBuffer.wrap(content).getShort(6) < JAVA_6;
    }

    private byte[] renewedClass(byte[] older) {
        ClassReader reader = new ClassReader(older);
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
            @Override
            protected ClassLoader getClassLoader() {
                return libraries;
            }
        };
        ClassVisitor newer = new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public void visit(
                    int version, int access, String name, String signature, String superName, String[] interfaces) {
                super.visit(JAVA_6, access, name, signature, superName, interfaces);
            }
        };
        reader.accept(newer, ClassReader.SKIP_FRAMES);
        return writer.toByteArray();
    }
}
