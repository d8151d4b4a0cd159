package org.ellwand.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.util.Locale;
import java.util.Optional;

/**
 * Where standard output goes. Writers for print swallow what goes wrong; here it is kept until somebody asks, so that a
 * schema or a sheet cut short by a full disk does not pass for a whole one.
 */
final class Outlet extends FilterOutputStream {
    private Optional<IOException> failure = Optional.empty();

    Outlet(OutputStream target) {
        super(target);
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        try {
            out.write(bytes, from, count);
        } catch (IOException e) {
            if (failure.isEmpty()) {
                failure = Optional.of(e);
            }
            throw e;
        }
    }

    /** The first thing that went wrong. A reader that has seen enough and closed its end of a pipe is none. */
    Optional<IOException> failure() {
        return failure.map(Outlet::reason)
                .filter(reason -> !reason.toLowerCase(Locale.ROOT).contains("broken pipe"))
                .map(reason -> new FileSystemException("standard output", null, reason));
    }

    private static String reason(IOException failure) {
        String message = failure.getMessage();
        return message == null ? "cannot be written" : message;
    }
}
