package org.ellwand.report;

import freemarker.core.Environment;
import freemarker.core.InvalidReferenceException;
import freemarker.template.TemplateException;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateHashModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateModelIterator;
import freemarker.template.TemplateScalarModel;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;

/** An error in a template, with the names that were to be had where it happened. */
final class TemplateFault extends TemplateException {
    private static final long serialVersionUID = 1L;

    private final String available;

    private TemplateFault(TemplateException cause, Environment environment, String available) {
        super("template error", cause, environment);
        this.available = available;
    }

    /** Called by the engine while the names of the template can still be asked. */
    static void rethrow(TemplateException fault, Environment environment, Writer out) throws TemplateException {
        // Comes by again on its way out of every macro and include.
        if (fault instanceof TemplateFault) {
            throw fault;
        }
        throw new TemplateFault(fault, environment, available(fault, environment));
    }

    String available() {
        return available;
    }

    private static String available(TemplateException fault, Environment environment) throws TemplateModelException {
        String blamed = fault.getBlamedExpressionString();
        if (!(fault instanceof InvalidReferenceException) || blamed == null) {
            return "";
        }
        String path = blamed.substring(0, Math.max(blamed.lastIndexOf('.'), 0));
        TemplateModel owner = owner(path, environment);
        String where = path.isEmpty() ? "at the top" : "in " + path;
        return owner instanceof TemplateHashModelEx hash && !hash.isEmpty()
                ? where + ": " + String.join(", ", keys(hash))
                : "";
    }

    private static TemplateModel owner(String path, Environment environment) throws TemplateModelException {
        if (path.isEmpty()) {
            return environment.getDataModel();
        }
        int dot = path.lastIndexOf('.');
        if (dot >= 0) {
            return member(owner(path.substring(0, dot), environment), path.substring(dot + 1));
        }
        TemplateModel variable = environment.getVariable(path);
        return variable == null ? TemplateModel.NOTHING : variable;
    }

    private static TemplateModel member(TemplateModel owner, String name) throws TemplateModelException {
        TemplateModel found = owner instanceof TemplateHashModel hash ? hash.get(name) : null;
        return found == null ? TemplateModel.NOTHING : found;
    }

    private static List<String> keys(TemplateHashModelEx hash) throws TemplateModelException {
        List<String> names = new ArrayList<>();
        TemplateModelIterator keys = hash.keys().iterator();
        while (keys.hasNext()) {
            if (keys.next() instanceof TemplateScalarModel name) {
                names.add(name.getAsString());
            }
        }
        return names;
    }
}
