package org.ellwand.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * What a command writes as a folder. The record in each says what kind it is, so that no command replaces what another
 * wrote. Letters and plans are there to be worked on: their record holds the digest of every file, and a folder in
 * which one was added or changed is not replaced.
 */
public enum OutputKind {
    /** What {@code audit} writes. */
    REPORT("a report", "audit.json", "ellwand-audit"),
    /** What {@code compare} writes. */
    COMPARISON("a comparison", "comparison.json", "ellwand-comparison"),
    /** What {@code ask} writes. */
    LETTERS("a set of letters", "letters.json", "ellwand-letters"),
    /** What {@code plan} writes. */
    PLAN("a plan", "plan.json", "ellwand-plan");

    private static final int MARK_BYTES = 200;

    private final String noun;
    private final String record;
    private final String format;

    OutputKind(String noun, String record, String format) {
        this.noun = noun;
        this.record = record;
        this.format = format;
    }

    /** Whether it is only ever read, and its record holds what it is about. */
    boolean bringsRecord() {
        return this == REPORT || this == COMPARISON;
    }

    String noun() {
        return noun;
    }

    /** Why a file that is in the way does not belong there. */
    String strange() {
        return bringsRecord() ? "which is not of " + noun : "which was added or changed since";
    }

    /** Whether a folder holds an output of this kind. */
    boolean isAt(Path folder) throws IOException {
        Path file = folder.resolve(record);
        if (!Files.isRegularFile(file)) {
            return false;
        }
        Pattern mark = Pattern.compile("\\s*\\{\\s*\"format\"\\s*:\\s*\"" + format + "\"");
        try (var in = Files.newInputStream(file)) {
            return mark.matcher(new String(in.readNBytes(MARK_BYTES), StandardCharsets.UTF_8))
                    .lookingAt();
        }
    }

    /** The files with the record beside them; some bring their own. */
    SortedMap<String, byte[]> withRecord(SortedMap<String, byte[]> files) {
        if (bringsRecord()) {
            return files;
        }
        StringBuilder text =
                new StringBuilder("{\n  \"format\": \"" + format + "\",\n  \"version\": 1,\n  \"files\": {");
        String between = "\n";
        for (var file : files.entrySet()) {
            text.append(between).append("    \"").append(file.getKey()).append("\": \"");
            text.append(digest(file.getValue())).append('"');
            between = ",\n";
        }
        SortedMap<String, byte[]> all = new TreeMap<>(files);
        all.put(record, text.append("\n  }\n}\n").toString().getBytes(StandardCharsets.UTF_8));
        return all;
    }

    /** A file that is not as it was written. */
    Optional<Path> changed(Path folder) throws IOException {
        String written = Files.readString(folder.resolve(record));
        try (var entries = Files.list(folder)) {
            for (Path entry : entries.sorted().toList()) {
                if (!entry.endsWith(record) && !isAsWritten(entry, written)) {
                    return Optional.of(entry);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isAsWritten(Path entry, String written) throws IOException {
        return Files.isRegularFile(entry, LinkOption.NOFOLLOW_LINKS)
                && written.contains("\"" + entry.getFileName() + "\": \"" + digest(Files.readAllBytes(entry)) + "\"");
    }

    private static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // Every Java has it.
        }
    }
}
