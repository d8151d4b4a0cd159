package org.ellwand.claim;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Set;
import org.ellwand.input.InputException;
import org.ellwand.quantity.Quantities;

/** A folder with claims files, for tests. Products and makers are invented. */
final class ClaimsFolder {
    static final String HEAD = "product: Skerry\neditions:\n  - {id: box, source: Box, dated: 2025}\n";

    private final Path folder;

    ClaimsFolder(Path folder) throws IOException {
        this.folder = folder;
        Files.createDirectories(folder.resolve("claims"));
    }

    static ClaimsReader reader() {
        return new ClaimsReader(Quantities.forms(), Set.of("direction"));
    }

    ClaimsFolder with(String name, String text) throws IOException {
        Files.writeString(folder.resolve("claims").resolve(name), text);
        return this;
    }

    Product read(String text) throws IOException, InputException {
        with("a.yaml", text);
        return reader().read(folder, "claims/a.yaml");
    }

    /** The plain rule of a file whose one claim has these keys. */
    Rule rule(String stated, String assumed) throws IOException, InputException {
        return read(claim("stated: {" + stated + "}\n    assumed: {" + assumed + "}"))
                .claims()
                .get(0)
                .rule()
                .orElseThrow();
    }

    /** A file with one claim, whose rule begins in line 8. */
    static String claim(String rest) {
        return HEAD + "claims:\n  - id: one\n    edition: box\n    quote: Less noise.\n    " + rest + "\n";
    }

    /** What a file is refused with. */
    String refusal(String text) throws IOException {
        try {
            read(text);
            return "nothing";
        } catch (InputException e) {
            return String.valueOf(e.getMessage());
        }
    }

    static String resource(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(ClaimsFolder.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
