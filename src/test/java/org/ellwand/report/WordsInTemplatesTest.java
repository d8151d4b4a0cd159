package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What readers read stands in templates: the classes that make their models hold keys, never a sentence, so that templates
 * in another language make pages in that language.
 */
class WordsInTemplatesTest {
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\n]*", Pattern.DOTALL);
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern SEVERAL_WORDS = Pattern.compile("[A-Za-z]{2,} [a-z]{2,}");

    /** Why these hold words all the same. */
    private static final Map<String, String> EXCEPT = Map.ofEntries(
            Map.entry("BenchFile", "the session file and its comments, in the language of sessions"),
            Map.entry("PanelFile", "the session file and its comments, in the language of sessions"),
            Map.entry("SittingFile", "the session file and its comments, in the language of sessions"),
            Map.entry("JunitXml", "a build server's record; it is no page"),
            Map.entry("CellTable", "the head of a data file, which the contract fixes"),
            Map.entry("VerdictTable", "the head of a data file, which the contract fixes"),
            Map.entry("KnownTemplates", "messages of errors"),
            Map.entry("OutputKind", "messages of errors"),
            Map.entry("OutputPlace", "messages of errors"),
            Map.entry("PageScript", "a message of an error"),
            Map.entry("PlanFiles", "a message of an error"),
            Map.entry("Raster", "messages of errors"),
            Map.entry("ReportFolder", "messages of errors"),
            Map.entry("TemplateFault", "messages of errors"),
            Map.entry("Templates", "messages of errors"),
            Map.entry("VagueWord", "what is looked for in a maker's words"));

    /** Names of conditions, devices and quantities, as users write them in claims and sessions. */
    private static final Set<String> NAMES = Set.of(
            "insertion gain",
            "device=open ear",
            "equivalent input noise",
            "pink noise",
            "onset level",
            "level drift",
            "gain steadiness",
            "harmonic distortion",
            "noise dose",
            "permissible duration",
            "pure tone",
            "field microphone ");

    private static List<Path> classes() throws IOException {
        List<Path> classes = new ArrayList<>();
        for (String of : List.of("ask", "compare", "plan", "report")) {
            try (Stream<Path> files = Files.list(Path.of("src/main/java/org/ellwand", of))) {
                files.filter(file -> file.toString().endsWith(".java")).sorted().forEach(classes::add);
            }
        }
        return classes;
    }

    private static String name(Path file) {
        return file.getFileName().toString().replace(".java", "");
    }

    private static Stream<String> texts(Path file) throws IOException {
        return LITERAL.matcher(COMMENT.matcher(Files.readString(file)).replaceAll(""))
                .results()
                .map(found -> found.group(1))
                .filter(text -> SEVERAL_WORDS.matcher(text).find());
    }

    private static String templates() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("templates"))) {
            StringBuilder all = new StringBuilder();
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".ftl")).sorted().toList()) {
                all.append(Files.readString(file));
            }
            return all.toString();
        }
    }

    @Test
    void aModelHoldsKeysThatTemplatesMakeWordsOf() throws IOException {
        String templates = templates();
        Map<String, List<String>> sentences = new TreeMap<>();
        for (Path file : classes()) {
            List<String> unknown = texts(file)
                    .filter(text -> !NAMES.contains(text) && !templates.contains('"' + text + '"'))
                    .toList();
            if (!unknown.isEmpty() && !EXCEPT.containsKey(name(file))) {
                sentences.put(name(file), unknown);
            }
        }
        assertThat(sentences).isEmpty();
    }

    @Test
    void noExceptionIsLeftOver() throws IOException {
        Set<String> wordy = new TreeSet<>();
        for (Path file : classes()) {
            if (texts(file).findAny().isPresent()) {
                wordy.add(name(file));
            }
        }
        assertThat(wordy).containsAll(EXCEPT.keySet());
        assertThat(classes().stream().map(WordsInTemplatesTest::name).collect(Collectors.toSet()))
                .containsAll(EXCEPT.keySet());
    }
}
