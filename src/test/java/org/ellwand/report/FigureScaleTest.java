package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The axes as they stand in the files. */
class FigureScaleTest {
    private static final Map<String, String> DRAWN = FigureSamples.drawn();

    private static Map<String, String> overFrequency() {
        Map<String, String> figures = new TreeMap<>(DRAWN);
        figures.values().removeIf(svg -> !svg.contains(">Frequency (Hz)</text>"));
        return figures;
    }

    private static String words(String svg) {
        return SvgText.all(svg).stream().map(SvgText::text).collect(Collectors.joining(" "));
    }

    /** Aspect ratios of IEC 60263:2020, 4.1 (10, 20, 25 or 50 dB a decade; read in a public extract). */
    @Test
    void aDecadeIsAsLongAsOneOfTheStandardsNumbersOfDecibels() {
        assertThat(overFrequency()).hasSizeGreaterThan(30);
        overFrequency().forEach((path, svg) -> {
            List<SvgText> octaves = SvgText.octaves(svg);
            List<SvgText> levels = SvgText.ordinate(svg);
            SvgText first = octaves.get(0);
            SvgText last = octaves.get(octaves.size() - 1);
            double decadePx = (last.x() - first.x()) / Math.log10(last.number() / first.number());
            SvgText low = levels.get(0);
            SvgText high = levels.get(levels.size() - 1);
            double pxPerDb = (low.y() - high.y()) / (high.number() - low.number());
            double ratio = decadePx / pxPerDb;
            assertThat(List.of(10.0, 25.0, 50.0))
                    .as(path)
                    .anyMatch(allowed -> Math.abs(ratio - allowed) < 0.01 * allowed);
            assertThat(words(svg)).as(path).contains("Scale: " + Math.round(ratio) + "\u00a0dB to a decade.");
        });
    }

    @Test
    void siblingsHaveTheSameAxes() {
        Map<String, List<String>> families = DRAWN.keySet().stream()
                .filter(path -> path.matches(".*_levels_\\d+\\.svg"))
                .collect(Collectors.groupingBy(path -> path.replaceAll("_\\d+\\.svg", "")));
        assertThat(families).hasSize(2).allSatisfy((family, paths) -> {
            assertThat(paths).hasSizeGreaterThan(1);
            assertThat(paths.stream().map(DRAWN::get).map(SvgText::ordinate).distinct())
                    .hasSize(1);
            assertThat(paths.stream().map(DRAWN::get).map(SvgText::octaves).distinct())
                    .hasSize(1);
        });
    }

    /** At 390 px a page leaves 358 px for a figure; 9 px there is what the smallest letters must have. */
    @Test
    void lettersAreReadOnATelephone() {
        Pattern sizes = Pattern.compile("font-size=\"([\\d.]+)\"");
        DRAWN.forEach((path, svg) -> {
            double width =
                    Double.parseDouble(SvgText.parsed(svg).getDocumentElement().getAttribute("width"));
            assertThat(sizes.matcher(svg).results().map(found -> Double.parseDouble(found.group(1))))
                    .as(path)
                    .isNotEmpty()
                    .allMatch(size -> size * 358 / width >= 9);
        });
    }

    /** A4 less margins is 178 mm by 259 mm; at the printed width of 120 mm the tallest must fit. */
    @Test
    void everyFigureFitsAPage() {
        DRAWN.forEach((path, svg) -> {
            var root = SvgText.parsed(svg).getDocumentElement();
            double tall =
                    Double.parseDouble(root.getAttribute("height")) / Double.parseDouble(root.getAttribute("width"));
            assertThat(120 * tall).as(path).isLessThan(215);
        });
    }

    @Test
    void namesBesideLinesDoNotTouch() {
        overFrequency().forEach((path, svg) -> {
            Map<Double, List<SvgText>> columns = SvgText.all(svg).stream()
                    .filter(text -> text.anchor().isEmpty() && text.x() > 250)
                    .collect(Collectors.groupingBy(SvgText::x));
            columns.values().forEach(column -> {
                List<Double> heights = column.stream().map(SvgText::y).sorted().toList();
                for (int i = 1; i < heights.size(); i++) {
                    assertThat(heights.get(i) - heights.get(i - 1)).as(path).isGreaterThanOrEqualTo(14.9);
                }
            });
        });
    }

    @Test
    void ratiosFollowTheRange() {
        assertThat(CurveScale.dbPerDecade(8)).isEqualTo(10);
        assertThat(CurveScale.dbPerDecade(25)).isEqualTo(25);
        assertThat(CurveScale.dbPerDecade(50)).isEqualTo(25);
        assertThat(CurveScale.dbPerDecade(70)).isCloseTo(50, within(0.0));
    }
}
