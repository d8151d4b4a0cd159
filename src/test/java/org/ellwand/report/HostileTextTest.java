package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Texts that mean harm stay texts in every output. */
class HostileTextTest {
    private static final Set<String> VOID = Set.of("meta", "br", "img", "hr", "input", "!doctype");

    @ParameterizedTest
    @ValueSource(strings = {"audit.html", "article.html"})
    void htmlCarriesNoScriptAndClosesWhatItOpens(String page) throws InputException {
        String html = ReportWriterTest.texts().get(page);
        assertThat(html).contains("&lt;script&gt;alert(1)&lt;/script&gt;");
        assertThat(html.split("<script", -1)).as("its own script only").hasSize(page.startsWith("audit") ? 2 : 1);
        assertThat(html).doesNotContain("\u202E").doesNotContain("\u0007");
        assertThat(unclosed(html)).isEmpty();
    }

    @Test
    void thePageAsksNothingOfTheNetworkAndHasEveryIdOnce() throws InputException {
        String html = ReportWriterTest.texts().get("audit.html");
        assertThat(html).doesNotContainPattern("(?i)(src|href)=\"(?!#)").doesNotContain("@import");
        assertThat(html.replace("http://www.w3.org/2000/svg", "")).doesNotContainPattern("https?://|url\\((?!#)");
        List<String> ids = Pattern.compile(" id=\"([^\"]+)\"")
                .matcher(html)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(ids).hasSizeGreaterThan(30).doesNotHaveDuplicates();
        assertThat(Pattern.compile("href=\"#([^\"]+)\"").matcher(html).results().map(found -> found.group(1)))
                .isNotEmpty()
                .allMatch(new HashSet<>(ids)::contains);
    }

    @ParameterizedTest
    @CsvSource({"audit.md", "article.md"})
    void markdownRendersWithoutTagsLinksOrCodeOfTheirs(String page) throws InputException {
        MutableDataSet options = new MutableDataSet();
        options.set(Parser.EXTENSIONS, List.of(TablesExtension.create()));
        String markdown = ReportWriterTest.texts().get(page);
        String html = HtmlRenderer.builder(options)
                .build()
                .render(Parser.builder(options).build().parse(markdown));
        assertThat(html)
                .contains("&lt;script&gt;alert(1)&lt;/script&gt; | `rm` {onclick=x} [a](javascript:b) *c* d &amp;")
                .doesNotContain("<script")
                .doesNotContain("<code>rm")
                .doesNotContain("<em>c</em>")
                .doesNotContain("javascript:b\"");
    }

    @Test
    void aMarkdownTableKeepsItsColumns() throws InputException {
        String[] lines = ReportWriterTest.texts().get("article.md").split("\n");
        long columns = 10;
        assertThat(lines)
                .filteredOn(line -> line.startsWith("| "))
                .hasSize(9)
                .allSatisfy(line -> assertThat(separators(line)).as(line).isEqualTo(columns));
    }

    @Test
    void figuresAreWellFormedAndSayWhatTheyShow() throws Exception {
        for (Map.Entry<String, String> file : ReportWriterTest.texts().entrySet()) {
            if (file.getKey().endsWith(".svg")) {
                Element svg = parsed(file.getValue()).getDocumentElement();
                assertThat(svg.getAttribute("role")).isEqualTo("img");
                assertThat(svg.getElementsByTagName("title").getLength()).isEqualTo(1);
                assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
                        .containsIgnoringCase("claimed");
                assertThat(file.getValue())
                        .as(file.getKey())
                        .doesNotContain("NaN")
                        .doesNotContain("Infinity");
            }
        }
    }

    @Test
    void aFigureHasOctaveTicksATrueMinusAndArrowsWhereOnlyABoundWasMeasured() throws Exception {
        Map<String, String> texts = ReportWriterTest.texts();
        assertThat(words(texts.get("figures/skerry-tide-flood.svg")))
                .contains("125", "250", "500", "1k", "2k", "4k", "8k")
                .contains("Frequency (Hz)", "Attenuation (dB)", "left", "right")
                .contains("claimed: 15 to 21\u00a0dB, mean of the bands");
        assertThat(String.join(" ", words(texts.get("figures/skerry-tide-flood.svg"))))
                .contains("Arrow: only a bound was measured; the true value lies in this direction.");
        assertThat(words(texts.get("figures/skerry-tide-sum.svg"))).contains("\u22125");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", " =1+1", "\n=1"})
    void aCellThatASpreadsheetWouldReckonIsDefused(String text) {
        assertThat(VerdictTable.safe(text)).isEqualTo("'" + text);
    }

    @Test
    void plainWordsStayAsTheyAreInACell() {
        assertThat(VerdictTable.safe("reduction in flood - a = b")).isEqualTo("reduction in flood - a = b");
    }

    @Test
    void tenThousandCharactersOfHarmStayWords() throws InputException {
        String quote = "<img src=x onerror=alert(1)> | `a` \u202E\u2067 ".repeat(220) + "=1+1";
        Map<String, String> texts = ReportWriterTest.texts(SampleAudit.quoting(quote));
        assertThat(texts.get("audit.html")).contains("&lt;img src=x").doesNotContain("<img src=x");
        assertThat(unclosed(texts.get("audit.html"))).isEmpty();
        texts.forEach((path, text) ->
                assertThat(text).as(path).doesNotContain("\u202E").doesNotContain("\u2067"));
        assertThat(texts.get("article.md").lines().filter(line -> line.startsWith("| 1 |")))
                .hasSize(1)
                .allMatch(line -> separators(line) == 10);
    }

    @Test
    void theTableIsSafeToOpenInASpreadsheet() throws InputException {
        List<String> rows = ReportWriterTest.texts().get("verdicts.csv").lines().toList();
        assertThat(rows.get(0))
                .isEqualTo("product,claim,edition,topic,verdict,probability,value,unit,lower,upper,"
                        + "standard uncertainty,interval lower,interval upper,rule,reason");
        assertThat(rows.get(1))
                .isEqualTo(
                        "Skerry Tide,flood,web-2026-05,flood,pass,0.99234,17.9,dB,15,21,0.52,16.880799999999997,18.9192,"
                                + "\"mean attenuation, flood, 125 Hz to 8 kHz, 90 to 100 dB SPL: 15 to 21 dB\",");
        assertThat(rows.get(2)).contains(",'=cmd|' /C calc'!A0,marginal,0.9497,");
        assertThat(rows.get(4)).contains(",fail,0.0023,-3.04,dB,15,,0.6,");
        assertThat(rows.get(7))
                .isEqualTo(
                        "Skerry Tide,bang,web-2026-05,bang,untested,,,,,,,,,,needs an impulse source and a test fixture");
    }

    private static long separators(String line) {
        return Pattern.compile("(?<!\\\\)\\|").matcher(line).results().count();
    }

    private static List<String> words(String svg) throws Exception {
        NodeList texts = parsed(svg).getElementsByTagName("text");
        return IntStream.range(0, texts.getLength())
                .mapToObj(i -> texts.item(i).getTextContent())
                .toList();
    }

    private static Document parsed(String xml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }

    /** Tags left open, and those closed without having been opened. */
    private static List<String> unclosed(String html) {
        ArrayDeque<String> open = new ArrayDeque<>();
        String body = html.replaceAll("(?s)<(style|script)>.*?</\\1>", "");
        for (MatchResult tag : Pattern.compile("<(/?)([a-zA-Z!][a-zA-Z0-9]*)[^>]*?(/?)>")
                .matcher(body)
                .results()
                .toList()) {
            String name = tag.group(2).toLowerCase(Locale.ROOT);
            if (tag.group(1).isEmpty() && tag.group(3).isEmpty() && !VOID.contains(name)) {
                open.push(name);
            } else if (!tag.group(1).isEmpty() && !name.equals(open.peek())) {
                return List.of("</" + name + "> closes " + open.peek());
            } else if (!tag.group(1).isEmpty()) {
                open.pop();
            }
        }
        return List.copyOf(open);
    }
}
