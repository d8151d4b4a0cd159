package org.ellwand.report;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ellwand.input.InputException;
import org.ellwand.input.Inside;
import org.ellwand.input.Place;
import org.ellwand.input.Problem;
import org.ellwand.words.Sentences;

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
        List<String> names = names(folder.get());
        refuseStrangers(names);
        refuseUnreadable(folder.get(), names);
        TemplateLoader users = new FileTemplateLoader(folder.get().toFile());
        return new MultiTemplateLoader(new TemplateLoader[] {users, builtIn});
    }

    /** The sentences of remarks; a file of the user's replaces single ones. */
    static Sentences sentences(Optional<Path> folder) throws InputException {
        Optional<Path> file = folder.map(f -> f.resolve(Sentences.FILE)).filter(Files::isRegularFile);
        if (file.isEmpty()) {
            return Sentences.english();
        }
        String name = "templates/" + Sentences.FILE;
        try {
            if (Files.size(file.get()) > 4L * Sentences.LONGEST) {
                throw new InputException(Place.ofFile(name), "longer than " + Sentences.LONGEST + " characters");
            }
            return Sentences.english().with(name, Files.readString(file.get()));
        } catch (CharacterCodingException e) {
            throw new InputException(Place.ofFile(name), "is not UTF-8 text");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** A misspelt name would otherwise be passed over in silence. */
    private static void refuseStrangers(List<String> names) throws InputException {
        List<Problem> strangers = names.stream()
                .filter(name -> name.endsWith(".ftl") && !name.startsWith("my-") && !NAMES.contains(name))
                .map(KnownTemplates::stranger)
                .toList();
        if (!strangers.isEmpty()) {
            throw new InputException(strangers);
        }
    }

    /**
     * The loader would pass over a link that leaves the folder, and take the built-in template, without a word; of a file
     * that may not be read it would name the template that asks for it.
     */
    private static void refuseUnreadable(Path folder, List<String> names) throws IOException, InputException {
        for (String name : names) {
            if (!Files.isRegularFile(folder.resolve(name))) {
                continue;
            }
            Inside.check(folder, name, "templates/" + name);
            if (!Files.isReadable(folder.resolve(name))) {
                throw new InputException(Place.ofFile("templates/" + name), "cannot be read: no permission");
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
