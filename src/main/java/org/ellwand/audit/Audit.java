package org.ellwand.audit;

import java.util.List;
import org.ellwand.check.Finding;
import org.ellwand.measurement.Session;

/**
 * The whole result: a plain value. Everything after it only reads it.
 *
 * @param inputs every file that was read, sorted by path
 * @param products in order of their files
 * @param sessions the sessions that were read, in order of their files (for what is printed about the measurement)
 * @param findings about the data
 */
public record Audit(List<Input> inputs, List<ProductAudit> products, List<Session> sessions, List<Finding> findings) {
    /**
     * A file and the SHA-256 of its bytes, in hexadecimal.
     *
     * @param file path relative to the audited folder, with forward slashes
     * @param sha256 64 hexadecimal digits, small letters
     */
    public record Input(String file, String sha256) {}
}
