package org.ellwand.audit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;

/** Hashes the files of a folder, those that are told of early while they are read. */
final class Hashing {
    private final Path folder;
    private final Map<String, CompletableFuture<String>> begun = new ConcurrentHashMap<>();

    Hashing(Path folder) {
        this.folder = folder;
    }

    /** Begins with a file, whose path is relative to the folder. */
    void begin(String file) {
        begun.computeIfAbsent(file, f -> CompletableFuture.supplyAsync(() -> hash(f)));
    }

    private String hash(String file) {
        try {
            return Inputs.sha256(folder.resolve(file));
        } catch (IOException e) {
            throw new CompletionException(e);
        }
    }

    /** Each file once, sorted by path. */
    List<Audit.Input> of(Collection<String> files) throws IOException {
        List<Audit.Input> inputs = new ArrayList<>();
        for (String file : new TreeSet<>(files)) {
            CompletableFuture<String> early = begun.get(file);
            inputs.add(new Audit.Input(file, early == null ? Inputs.sha256(folder.resolve(file)) : awaited(early)));
        }
        return List.copyOf(inputs);
    }

    private static String awaited(CompletableFuture<String> hash) throws IOException {
        try {
            return hash.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof IOException unreadable) {
                throw unreadable;
            }
            throw e;
        }
    }
}
