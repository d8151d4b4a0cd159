package org.ellwand.report;

import freemarker.core.CommonMarkupOutputFormat;
import freemarker.core.CommonTemplateMarkupOutputModel;
import java.io.IOException;
import java.io.Writer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Escapes data for GitHub-flavoured Markdown, so that a template cannot forget to: no data opens a tag, a link, a code
 * span, a table cell or a formula.
 */
final class MarkdownFormat extends CommonMarkupOutputFormat<MarkdownFormat.Markup> {
    static final String NAME = "Markdown";
    static final MarkdownFormat INSTANCE = new MarkdownFormat();

    private static final Pattern SPECIAL = Pattern.compile("[\\\\`*_\\[\\]|~{}$]");
    /** What makes a heading, a list, a quotation or a rule at the start of a line. */
    private static final Pattern AT_START = Pattern.compile("^(\\s*)([#+=-])");

    private static final Pattern NUMBERED = Pattern.compile("^(\\s*\\d+)([.)])(?=\\s|$)");

    private MarkdownFormat() {}

    /** Markdown, or text that is still to be escaped. */
    static final class Markup extends CommonTemplateMarkupOutputModel<Markup> {
        Markup(String plainText, String markup) {
            super(plainText, markup);
        }

        @Override
        public MarkdownFormat getOutputFormat() {
            return INSTANCE;
        }
    }

    @Override
    public String getName() {
        return NAME;
    }

    @Override
    public String getMimeType() {
        return "text/markdown";
    }

    @Override
    public String escapePlainText(String text) {
        String line = text.replaceAll("\\s*\\n\\s*", " ");
        String escaped = SPECIAL.matcher(line).replaceAll(found -> Matcher.quoteReplacement("\\" + found.group()));
        String entities = escaped.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        String start = AT_START.matcher(entities).replaceFirst("$1\\\\$2");
        return NUMBERED.matcher(start).replaceFirst("$1\\\\$2");
    }

    @Override
    public void output(String text, Writer out) throws IOException {
        out.write(escapePlainText(text));
    }

    @Override
    public boolean isLegacyBuiltInBypassed(String builtIn) {
        return false;
    }

    @Override
    protected Markup newTemplateMarkupOutputModel(String plainText, String markup) {
        return new Markup(plainText, markup);
    }
}
