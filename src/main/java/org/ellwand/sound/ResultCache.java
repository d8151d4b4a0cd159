package org.ellwand.sound;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.ellwand.input.InputException;

/**
 * Remembers what was measured of a recording, by the SHA-256 of its content and of what was asked. It lies outside the audited
 * folder and may be deleted at any time; where it cannot be written, everything is measured anew.
 */
public final class ResultCache {
    /** System property with its folder; otherwise it lies where the user's caches lie. */
    public static final String FOLDER = "ellwand.cache";

    /** Counts up with every change of what is measured or how. */
    private static final String EDITION = "3";

    private final Path folder;
    private final Map<Path, String> contents = new HashMap<>();

    /** What measures, where nothing is remembered. */
    @FunctionalInterface
    interface Work {
        SortedMap<String, double[]> numbers() throws IOException, InputException;
    }

    /**
     * A cache in a folder.
     *
     * @param folder made where it is not there
     */
    public ResultCache(Path folder) {
        this.folder = folder;
    }

    /**
     * {@return the cache of this user} It lies in the folder that the system property {@link #FOLDER} names, else in
     * {@code ellwand} below {@code XDG_CACHE_HOME}, else below {@code .cache} of the home folder.
     */
    public static ResultCache ofUser() {
        String home = System.getProperty("user.home", ".");
        Path caches = Optional.ofNullable(System.getenv("XDG_CACHE_HOME"))
                .filter(text -> !text.isBlank())
                .map(Path::of)
                .orElse(Path.of(home, ".cache"));
        String asked = System.getProperty(FOLDER, "");
        return new ResultCache(asked.isBlank() ? caches.resolve("ellwand") : Path.of(asked));
    }

    /** The numbers of some work on a file; done only where they are not remembered. */
    SortedMap<String, double[]> get(WavFile file, String asked, Work work) throws IOException, InputException {
        Path place = folder.resolve(hash(EDITION + "\n" + content(file.path()) + "\n" + asked) + ".txt");
        Optional<SortedMap<String, double[]>> remembered = read(place);
        if (remembered.isPresent()) {
            return remembered.get();
        }
        SortedMap<String, double[]> numbers = work.numbers();
        write(place, numbers);
        return numbers;
    }

    private static Optional<SortedMap<String, double[]>> read(Path place) {
        try {
            return Files.exists(place) ? StoredNumbers.read(Files.readString(place)) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private void write(Path place, SortedMap<String, double[]> numbers) {
        try {
            Files.createDirectories(folder);
            Path fresh = Files.createTempFile(folder, "new", ".txt");
            Files.writeString(fresh, StoredNumbers.text(numbers));
            Files.move(fresh, place, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            // Without a cache it takes longer, and that is all.
        }
    }

    String content(Path path) throws IOException {
        String known = contents.get(path);
        if (known == null) {
            MessageDigest digest = sha256();
            byte[] block = new byte[1 << 16];
            try (InputStream in = new BufferedInputStream(Files.newInputStream(path), 1 << 16)) {
                for (int count = in.read(block); count >= 0; count = in.read(block)) {
                    digest.update(block, 0, count);
                }
            }
            known = HexFormat.of().formatHex(digest.digest());
            contents.put(path, known);
        }
        return known;
    }

    private static String hash(String text) {
        return HexFormat.of().formatHex(sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
