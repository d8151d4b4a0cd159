package org.ellwand.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Map;
import org.ellwand.input.InputException;

/** The page's own script with its hash, so that the page lets this one run and no other (CSP level 3, section 6.7.3). */
final class PageScript {
    private PageScript() {}

    static Map<String, Object> of(Templates templates) throws InputException {
        String text = templates.render("script.js.ftl", Map.of());
        return Fields.of("text", text).and("hash", "sha256-" + hash(text)).map();
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
