package org.ellwand.report;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;

/** What a report folder does to the disk, apart, so that a test can let each step fail. */
class Disk {
    void createFolder(Path folder) throws IOException {
        Files.createDirectories(folder);
    }

    void write(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes);
    }

    /** A rename: on one file system, so that it happens whole or not at all. */
    void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Deletes a folder with all it holds; links are deleted, not followed. */
    void delete(Path folder) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path dir, @org.jspecify.annotations.Nullable IOException failure)
                    throws IOException {
                if (failure != null) {
                    throw failure;
                }
                Files.delete(dir);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
