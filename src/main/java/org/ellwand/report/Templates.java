package org.ellwand.report;

import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.MalformedTemplateNameException;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.TemplateException;
import freemarker.template.TemplateNotFoundException;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.words.Sentences;

/**
 * Fills templates. They see maps, lists, texts and numbers and nothing else: no class, no file outside their folder, no
 * clock.
 */
final class Templates {
    private final Configuration configuration;
    private final Sentences sentences;

    private Templates(Configuration configuration, Sentences sentences) {
        this.configuration = configuration;
        this.sentences = sentences;
    }

    /** @param folder the user's templates; they stand in for the built-in ones of the same name */
    static Templates of(Optional<Path> folder) throws InputException {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        try {
            configuration.setTemplateLoader(KnownTemplates.loader(folder));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        secure(configuration);
        configuration.setLocale(Locale.ROOT);
        configuration.setLocalizedLookup(false);
        configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
        configuration.setNumberFormat("computer");
        configuration.setRegisteredCustomOutputFormats(List.of(MarkdownFormat.INSTANCE));
        configuration.setTemplateExceptionHandler(TemplateFault::rethrow);
        configuration.setLogTemplateExceptions(false);
        return new Templates(configuration, KnownTemplates.sentences(folder));
    }

    private static void secure(Configuration configuration) {
        configuration.setObjectWrapper(new SimpleObjectWrapper(Configuration.VERSION_2_3_34));
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
    }

    /** What remarks say: the built-in sentences, and the user's where he has some. */
    Sentences sentences() {
        return sentences;
    }

    /** Reads a template ahead of its use. One that is at fault says so when it is used: there may be nothing to write. */
    void read(String name) {
        try {
            configuration.getTemplate(name);
        } catch (IOException e) {
            forget(name);
        }
    }

    /** Reading it again fails in the same way, where the fault can be told. */
    private void forget(String name) {
        try {
            configuration.removeTemplateFromCache(name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The text that a template makes of a model.
     *
     * @throws InputException where the template is at fault; names it, the line, and what the template could have used
     */
    String render(String name, Map<String, Object> model) throws InputException {
        try {
            StringWriter text = new StringWriter();
            configuration.getTemplate(name).process(model, text);
            return text.toString();
        } catch (ParseException e) {
            throw new InputException(
                    place(e.getTemplateName(), e.getLineNumber(), e.getColumnNumber()),
                    firstLine(e.getEditorMessage()));
        } catch (TemplateException e) {
            throw fault(name, e);
        } catch (TemplateNotFoundException | MalformedTemplateNameException e) {
            throw new InputException(place(name, 0, 0), "there is no such template");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputException fault(String name, TemplateException e) {
        TemplateException cause = e.getCause() instanceof TemplateException inner ? inner : e;
        String available = e instanceof TemplateFault fault ? fault.available() : "";
        Integer line = cause.getLineNumber();
        Integer column = cause.getColumnNumber();
        String source = cause.getTemplateSourceName();
        return new InputException(
                place(source == null ? name : source, line == null ? 0 : line, column == null ? 0 : column),
                said(cause) + (available.isEmpty() ? "" : "; there is, " + available));
    }

    /** What is not there, in few words; any other fault in the engine's own. */
    private static String said(TemplateException cause) {
        String blamed = cause.getBlamedExpressionString();
        boolean missing = cause instanceof InvalidReferenceException;
        return missing && blamed != null ? "there is no " + blamed : firstLine(cause.getMessageWithoutStackTop());
    }

    private static Place place(String name, int line, int column) {
        return new Place("templates/" + name, line, column);
    }

    private static String firstLine(String text) {
        String trimmed = text.strip();
        int end = trimmed.indexOf('\n');
        return (end < 0 ? trimmed : trimmed.substring(0, end)).replaceAll("[:\\s]+$", "");
    }
}
