package org.ellwand.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** A manual page in the macros of {@code man(7)}. */
final class ManualPage {
    private static final String DEFAULT_VALUE = "${DEFAULT-VALUE}";

    private final CommandSpec root;
    private final StringBuilder text = new StringBuilder();

    private ManualPage(CommandSpec root) {
        this.root = root;
    }

    static String of(CommandSpec root) {
        return new ManualPage(root).page();
    }

    private String page() {
        String name = root.name();
        macro("TH", name.toUpperCase(Locale.ROOT), "1", "", name, "");
        macro("SH", "NAME");
        line(name + " \\- " + plain(root.usageMessage().description()));
        macro("SH", "SYNOPSIS");
        line("\\fB" + name + "\\fR COMMAND [OPTION]... [ARGUMENT]...");
        macro("SH", "COMMANDS");
        root.subcommands().values().stream()
                .map(CommandLine::getCommandSpec)
                .distinct()
                .forEach(this::command);
        macro("SH", "EXIT STATUS");
        root.usageMessage().exitCodeList().forEach((code, meaning) -> item("\\fB" + code + "\\fR", plain(meaning)));
        macro("SH", "EXAMPLES");
        footer(root);
        return text.toString();
    }

    private void command(CommandSpec command) {
        macro("SS", command.name());
        line(plain(command.usageMessage().description()));
        macro("PP");
        line(escaped(new CommandLine.Help(command, CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .synopsis(0)
                .replaceAll("\\s+", " ")
                .strip()));
        for (PositionalParamSpec parameter : command.positionalParameters()) {
            item("\\fI" + escaped(parameter.paramLabel()) + "\\fR", said(parameter));
        }
        for (OptionSpec option : command.options()) {
            item(names(option), said(option));
        }
        footer(command);
    }

    private static String names(OptionSpec option) {
        String names = Arrays.stream(option.names())
                .map(name -> "\\fB" + escaped(name) + "\\fR")
                .collect(Collectors.joining(", "));
        String label = option.arity().max() == 0 ? "" : " \\fI" + escaped(option.paramLabel()) + "\\fR";
        return names + label;
    }

    private static String said(ArgSpec argument) {
        String byDefault = Optional.ofNullable(argument.defaultValue()).orElse("");
        return plain(argument.description()).replace(escaped(DEFAULT_VALUE), escaped(byDefault));
    }

    /** An example: words as a paragraph, command lines as they are. */
    private void footer(CommandSpec command) {
        for (String line : command.usageMessage().footer()) {
            if (line.startsWith(" ")) {
                macro("nf");
                line("  " + escaped(line));
                macro("fi");
            } else {
                macro("PP");
                line(escaped(line));
            }
        }
    }

    private void item(String head, String words) {
        macro("TP");
        line(head);
        line(words);
    }

    private void macro(String name, String... arguments) {
        text.append('.').append(name);
        for (String argument : arguments) {
            text.append(" \"").append(escaped(argument)).append('"');
        }
        text.append('\n');
    }

    /** Nothing is no line: an empty one is a break of its own. */
    private void line(String words) {
        if (!words.isEmpty()) {
            text.append(words.startsWith(".") || words.startsWith("'") ? "\\&" : "")
                    .append(words)
                    .append('\n');
        }
    }

    private static String plain(String[] lines) {
        return plain(String.join(" ", lines));
    }

    private static String plain(String words) {
        return escaped(words.replace("%n", " ").replace("%%", "%").strip());
    }

    private static String escaped(String words) {
        return words.replace("\\", "\\e").replace("-", "\\-");
    }
}
