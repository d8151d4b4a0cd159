package org.ellwand.audit;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;

/** The files an audit rests on, by the SHA-256 of their bytes (FIPS 180-4), so that anybody can see what was judged. */
public final class Inputs {
    private static final int BUFFER_BYTES = 1 << 16;

    private Inputs() {}

    /**
     * {@return each file once, sorted by path}
     *
     * @param folder the audited folder
     * @param relativeFiles paths relative to it, with forward slashes
     * @throws IOException where one of them cannot be read
     */
    public static List<Audit.Input> hash(Path folder, Collection<String> relativeFiles) throws IOException {
        return new Hashing(folder).of(relativeFiles);
    }

    static String sha256(Path file) throws IOException {
        MessageDigest digest = newDigest();
        byte[] buffer = new byte[BUFFER_BYTES];
        try (InputStream in = Files.newInputStream(file)) {
            for (int count = in.read(buffer); count >= 0; count = in.read(buffer)) {
                digest.update(buffer, 0, count);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest newDigest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform is required to have SHA-256", e);
        }
    }
}
