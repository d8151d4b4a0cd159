package org.ellwand.report;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.ellwand.input.InputException;
import org.ellwand.words.Sentences;

/** Fills single templates with models that other packages make: maps, lists, texts and numbers. */
public final class TemplateWriter {
    private final Templates templates;

    private TemplateWriter(Templates templates) {
        this.templates = templates;
    }

    /**
     * {@return a writer}
     *
     * @param userTemplates folder whose files stand in for the built-in templates of the same name; absent: built-in only
     * @throws InputException where a file of that folder replaces no template
     */
    public static TemplateWriter with(Optional<Path> userTemplates) throws InputException {
        return new TemplateWriter(Templates.of(userTemplates));
    }

    /** {@return what remarks say: the built-in sentences, and those of the user's templates} */
    public Sentences sentences() {
        return templates.sentences();
    }

    /**
     * {@return what a template makes of a model, in UTF-8}
     *
     * @param template its file name
     * @param model texts, numbers, lists and maps
     * @throws InputException where a template of the user's is at fault
     */
    public byte[] write(String template, Map<String, Object> model) throws InputException {
        return templates.render(template, Clean.map(model)).getBytes(StandardCharsets.UTF_8);
    }
}
