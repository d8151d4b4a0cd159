package org.ellwand.report;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.input.Problem;

/** Where templates come from: the user's folder first, then those that ship with the program. */
final class KnownTemplates {
    static final List<String> NAMES = List.of(
            "article.html.ftl",
            "article.md.ftl",
            "audit.html.ftl",
            "audit.md.ftl",
            "comparison-words.ftl",
            "comparison.html.ftl",
            "comparison.md.ftl",
            "correction.md.ftl",
            "figure-style.ftl",
            "figure-words.ftl",
            "figure.svg.ftl",
            "figure.txt.ftl",
            "letter-questions.ftl",
            "letter.html.ftl",
            "letter.md.ftl",
            "plan.md.ftl",
            "script.js.ftl",
            "style.css.ftl",
            "words.ftl");

    private static final String BUILT_IN = "org/ellwand/templates";

    private KnownTemplates() {}

    static TemplateLoader loader(Optional<Path> folder) throws IOException, InputException {
        TemplateLoader builtIn = new ClassTemplateLoader(KnownTemplates.class.getClassLoader(), BUILT_IN);
        if (folder.isEmpty() || !Files.isDirectory(folder.get())) {
            return builtIn;
        }
        refuseStrangers(folder.get());
        // This loader refuses links that leave its folder.
        TemplateLoader users = new FileTemplateLoader(folder.get().toFile());
        return new MultiTemplateLoader(new TemplateLoader[] {users, builtIn});
    }

    /** A misspelt name would otherwise be passed over in silence. */
    private static void refuseStrangers(Path folder) throws IOException, InputException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Problem> strangers = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".ftl") && !name.startsWith("my-") && !NAMES.contains(name))
                    .sorted()
                    .map(KnownTemplates::stranger)
                    .toList();
            if (!strangers.isEmpty()) {
                throw new InputException(strangers);
            }
        }
    }

    private static Problem stranger(String name) {
        return new Problem(
                Place.ofFile("templates/" + name),
                "replaces no template; the templates are " + String.join(", ", NAMES)
                        + "; a file to include begins with my-");
    }
}
