package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's report as a reader sees it. Needs Chromium; where there is none the tests are skipped and say so. */
class PageInBrowserTest {
    /** A4 less the margins of the style sheet (16 mm each), at 96 px an inch. */
    private static final int PAPER_PX = (int) ((210 - 2 * 16) / 25.4 * 96);

    private static final String SHOWN = "document.querySelectorAll('#claim-table tbody tr:not([hidden])').length";

    /** Elements that reach beyond the window, those aside that are for screen readers alone. */
    private static final String CLIPPED = "[...document.querySelectorAll('main *')].filter(e =>"
            + " !(e.closest('thead') && getComputedStyle(e.closest('thead')).position === 'absolute')"
            + " && e.getClientRects().length && e.getBoundingClientRect().right > innerWidth + 1)"
            + ".slice(0, 5).map(e => e.outerHTML.slice(0, 80)).join(' ')";

    /** Texts of figures that leave their figure. */
    private static final String LOST = "[...document.querySelectorAll('figure svg')].flatMap(svg => {"
            + " const box = svg.getBoundingClientRect(); return [...svg.querySelectorAll('text')].filter(t => {"
            + " const b = t.getBoundingClientRect(); return b.left < box.left - 0.5 || b.right > box.right + 0.5"
            + " || b.top < box.top - 0.5 || b.bottom > box.bottom + 0.5; }).map(t => svg.getAttribute('aria-labelledby')"
            + " + ': ' + t.textContent); }).slice(0, 5).join('; ')";

    /** Pairs of texts in a figure that lie on each other by more than the room above and below letters. */
    private static final String ON_EACH_OTHER = "[...document.querySelectorAll('figure svg')].flatMap(svg => {"
            + " const boxes = [...svg.querySelectorAll('text')].map(t => [t, t.getBoundingClientRect()]);"
            + " const high = svg.getBoundingClientRect().width / 500 * 3; return boxes.flatMap(([t, a], i) =>"
            + " boxes.slice(i + 1).filter(([u, b]) => a.right > b.left + 1 && b.right > a.left + 1"
            + " && a.bottom > b.top + high && b.bottom > a.top + high).map(([u]) =>"
            + " svg.getAttribute('aria-labelledby') + ': ' + t.textContent + ' / ' + u.textContent)); })"
            + ".slice(0, 5).join('; ')";

    /** Not a folder that the test must empty: the browser's children may write to its profile a little longer. */
    private static final Path FOLDER = Path.of("target/page-in-browser").toAbsolutePath();

    private static Optional<Browser> running = Optional.empty();

    @BeforeAll
    static void open() throws Exception {
        Optional<Path> program = Browser.installed();
        assumeTrue(
                program.isPresent(),
                "no chromium on the path: the page is not looked at (apt-get install chromium makes it so)");
        for (Map.Entry<String, byte[]> file : report().entrySet()) {
            Path path = FOLDER.resolve(file.getKey());
            Files.createDirectories(path.resolveSibling(""));
            Files.write(path, file.getValue());
        }
        // A profile that a stopped run left locked would be refused.
        Path profile = Files.createTempDirectory(FOLDER, "profile");
        running = Optional.of(new Browser(program.orElseThrow(), profile));
    }

    private static Map<String, byte[]> report() throws IOException, InputException {
        Path demo = Path.of("");
        Audit audit = new Auditor(AuditOptions.standard())
                .audit(
                        new ClaimsReader(Quantities.forms(), Set.of()).readAll(demo),
                        SessionReader.readAll(demo),
                        List.of());
        return ReportWriter.with(Optional.empty()).render(audit, ReportOptions.plain());
    }

    @AfterAll
    static void close() throws InterruptedException {
        if (running.isPresent()) {
            running.get().close();
        }
    }

    private static Browser browser() {
        return running.orElseThrow();
    }

    @BeforeEach
    void load() throws InterruptedException {
        browser().medium("screen");
        browser().size(1280, 900);
        browser().open(FOLDER.resolve("audit.html"));
    }

    @Test
    void asksForNothingButItselfAndComplainsOfNothing() throws InterruptedException {
        assertThat(browser().evaluate("document.title")).isEqualTo("Claims and measurements: Skerry Tide, Skerry");
        assertThat(browser().requests()).isNotEmpty().allMatch(url -> url.endsWith("/audit.html"));
        assertThat(browser().complaints()).isEmpty();
    }

    @Test
    void filtersByVerdictProductAndWords() throws InterruptedException {
        assertThat(browser().evaluate(SHOWN)).isEqualTo("36");
        browser().evaluate("[...document.querySelectorAll('input[name=verdict]')].slice(0, 2).forEach(b => b.click())");
        assertThat(browser().evaluate(SHOWN)).isEqualTo("10");
        assertThat(browser().evaluate("document.querySelector('#filter p').textContent.trim()"))
                .isEqualTo("10 claims shown");
        input("select", "skerry");
        assertThat(browser().evaluate(SHOWN)).isEqualTo("5");
        input("input[type=search]", "UP TO 28");
        assertThat(browser().evaluate(SHOWN)).isEqualTo("1");
        input("input[type=search]", "no such word");
        assertThat(browser().evaluate(SHOWN + " + document.getElementById('none-shown').innerText"))
                .isEqualTo("0No claim fits the choice above.");
        browser().evaluate("document.querySelector('#filter button').click()");
        Thread.sleep(100);
        assertThat(browser().evaluate(SHOWN)).isEqualTo("36");
    }

    private static void input(String field, String value) throws InterruptedException {
        browser()
                .evaluate("(f => { f.value = '" + value + "'; f.dispatchEvent(new Event('input', {bubbles: true})); })"
                        + "(document.querySelector('#filter " + field + "'))");
    }

    @Test
    void sortsByAColumnBothWays() throws InterruptedException {
        String verdicts =
                "[...document.querySelectorAll('#claim-table tbody tr')].map(r => r.dataset.verdict[0]).join('')";
        browser().evaluate("document.querySelectorAll('#claim-table thead button')[4].click()");
        assertThat(browser().evaluate(verdicts)).matches("f+m+p+u+");
        assertThat(browser().evaluate("document.querySelectorAll('#claim-table th')[5].getAttribute('aria-sort')"))
                .isEqualTo("ascending");
        browser().evaluate("document.querySelectorAll('#claim-table thead button')[4].click()");
        assertThat(browser().evaluate(verdicts)).matches("u+p+m+f+");
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 1280, 1920})
    void nothingLeavesTheWindow(int width) throws InterruptedException {
        browser().size(width, 900);
        assertThat(browser().evaluate("document.documentElement.scrollWidth <= innerWidth"))
                .isEqualTo("true");
        assertThat(browser().evaluate(CLIPPED)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 1280})
    void noTextOfAFigureIsLostOrHidden(int width) throws InterruptedException {
        browser().size(width, 900);
        assertThat(browser().evaluate("document.querySelectorAll('figure svg text').length"))
                .matches("\\d{3,}");
        assertThat(browser().evaluate(LOST)).isEmpty();
        assertThat(browser().evaluate(ON_EACH_OTHER)).isEmpty();
    }

    /** 9 px on a telephone, less what a scroll bar takes, and 8 px (6 pt) on paper, where two figures stand beside each other. */
    @Test
    void lettersOfFiguresAreLargeEnough() throws InterruptedException {
        String smallest = "Math.min(...[...document.querySelectorAll('figure svg')]"
                + ".map(svg => 13 * svg.getBoundingClientRect().width / 500)).toFixed(1)";
        browser().size(390, 900);
        assertThat(Double.parseDouble(browser().evaluate(smallest))).isGreaterThanOrEqualTo(8.9);
        browser().medium("print");
        browser().size(PAPER_PX, 900);
        assertThat(Double.parseDouble(browser().evaluate(smallest))).isGreaterThanOrEqualTo(8);
    }

    @Test
    void paperClipsNothingAndShowsEveryClaimWhateverTheFilter() throws InterruptedException {
        input("input[type=search]", "no such word");
        browser().medium("print");
        browser().size(PAPER_PX, 900);
        assertThat(browser().evaluate(CLIPPED)).isEmpty();
        assertThat(browser()
                        .evaluate("[...document.querySelectorAll('#claim-table tbody tr')]"
                                + ".filter(r => r.getClientRects().length).length"))
                .isEqualTo("36");
    }

    /** The rules of axe-core, a library of accessibility checks (WCAG 2 and good practice). */
    @ParameterizedTest
    @CsvSource({"light, 1280", "dark, 1280", "light, 390"})
    void nobodyIsShutOut(String colours, int width) throws InterruptedException, IOException {
        Path axe = Path.of("target/axe/package/axe.min.js");
        assumeTrue(Files.exists(axe), "no " + axe + ": .ci/run puts it there");
        browser().colours(colours);
        browser().size(width, 900);
        browser().await(Files.readString(axe) + "; 'there'");
        String found = browser()
                .await(
                        "axe.run(document, {resultTypes: ['violations']}).then(r => (r.passes.length > 20 ? '' : 'nothing was looked at') + r.violations.map(v =>"
                                + " v.impact + ' ' + v.id + ' ' + v.nodes.length + ': ' + v.nodes[0].html.slice(0, 120)).join('\\n'))");
        assertThat(found).isEmpty();
    }

    @Test
    void isWholeWithoutItsScript() throws InterruptedException, IOException {
        Path still = FOLDER.resolve("still.html");
        Files.writeString(
                still, Files.readString(FOLDER.resolve("audit.html")).replaceAll("(?s)<script>.*?</script>", ""));
        browser().requests().clear();
        browser().open(still);
        assertThat(browser().evaluate(SHOWN)).isEqualTo("36");
        assertThat(browser().evaluate("document.getElementById('filter').getClientRects().length"))
                .isEqualTo("0");
        browser().requests().clear();
        browser().open(FOLDER.resolve("audit.html"));
    }
}
