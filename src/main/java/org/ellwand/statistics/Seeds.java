package org.ellwand.statistics;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Seeds made from names, so that what has the same name is drawn the same way wherever it is needed. */
public final class Seeds {
    private Seeds() {}

    /**
     * {@return the first eight bytes of the SHA-256 of the names, each closed by a zero byte so that borders count}
     *
     * @param names in an order that counts
     */
    public static long of(String... names) {
        MessageDigest digest = sha256();
        for (String name : names) {
            digest.update(name.getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
        }
        byte[] hash = digest.digest();
        long seed = 0;
        for (int i = 0; i < Long.BYTES; i++) {
            seed = (seed << Byte.SIZE) | (hash[i] & 0xFF);
        }
        return seed;
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
