package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ellwand.acoustics.Bound;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Point;
import org.junit.jupiter.api.Test;

/** What the figures say, and what is drawn where. */
class FigureWordsTest {
    private static final Map<String, String> DRAWN = FigureSamples.drawn();

    private static String svg(String end) {
        return DRAWN.entrySet().stream()
                .filter(file -> file.getKey().endsWith(end))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new AssertionError(end + " is not among " + DRAWN.keySet()));
    }

    private static String words(String svg) {
        return SvgText.all(svg).stream().map(SvgText::text).collect(Collectors.joining(" "));
    }

    private static String alt(String svg) {
        return SvgText.parsed(svg).getElementsByTagName("desc").item(0).getTextContent();
    }

    private static int count(String svg, String pattern) {
        return (int) Pattern.compile(pattern).matcher(svg).results().count();
    }

    @Test
    void aBoundIsNoMeasuredNumber() {
        String onset = svg("onset-beyond_series.svg");
        assertThat(alt(onset)).contains("onset level: at least 100\u00a0dB\u00a0SPL. Arrow: only a bound was measured");
        assertThat(onset).contains("h24 m-5 -4 l5 4 l-5 4");
        assertThat(svg("criterion-below_series.svg"))
                .contains("at most 60\u00a0dB\u00a0SPL")
                .contains("h-24 m5 -4 l-5 4 l5 4");
        String range = ManyCells.drawn(List.of(
                        ManyCells.of("1", 100, List.of(), List.of(), Bound.AT_LEAST),
                        ManyCells.of("2", 90, List.of(), List.of(), Bound.AT_MOST)))
                .get("figures/skerry-tide-flood.svg");
        assertThat(alt(range))
                .contains("1 at least 100\u00a0dB; 2 at most 90\u00a0dB")
                .doesNotContain("U =");
        assertThat(count(range, "h24 m-5 -4")).isEqualTo(1);
        assertThat(count(range, "h-24 m5 -4")).isEqualTo(1);
    }

    @Test
    void aBandOfWhichOnlyABoundIsKnownHasAnArrow() {
        CellResult whole = ManyCells.cell("1", 18, 3);
        List<Point> bands = whole.bands().stream()
                .map(band -> band.hz().equals(OptionalDouble.of(8000))
                        ? new Point(
                                band.hz(),
                                band.lessHz(),
                                30,
                                band.standardUncertainty(),
                                band.lower(),
                                band.upper(),
                                band.probability(),
                                Bound.AT_LEAST)
                        : band)
                .toList();
        String curve = ManyCells.drawn(List.of(ManyCells.of("1", 18, bands, List.of(), Bound.MEASURED)))
                .get("figures/skerry-tide-flood.svg");
        assertThat(alt(curve)).contains("and at least 30.0\u00a0dB at 8\u00a0kHz");
        assertThat(words(curve)).contains("Arrow: only a bound was measured; the true value lies in this direction.");
    }

    @Test
    void theOnsetIsMarkedOnItsLineWhereItsValueLies() {
        String svg = svg("skerry-tide-onset-letter_series.svg");
        List<SvgText> levels = SvgText.all(svg).stream()
                .filter(text -> text.anchor().equals("middle") && text.text().matches("\\d+"))
                .toList();
        SvgText first = levels.get(0);
        SvgText last = levels.get(levels.size() - 1);
        var ring = Pattern.compile("cx=\"([\\d.]+)\" cy=\"[\\d.]+\" r=\"6.5\"").matcher(svg);
        assertThat(ring.find()).isTrue();
        double share = (Double.parseDouble(ring.group(1)) - first.x()) / (last.x() - first.x());
        double level = first.number() + share * (last.number() - first.number());
        var said = Pattern.compile("crew-01-left ([\\d.]+)").matcher(alt(svg));
        assertThat(said.find()).isTrue();
        assertThat(level).isCloseTo(Double.parseDouble(said.group(1)), org.assertj.core.api.Assertions.within(0.06));
    }

    @Test
    void editionsStandInOrderOfTheirDatesWithWhatTheyClaim() {
        String svg = svg("skerry-tide_editions_1.svg");
        assertThat(alt(svg))
                .containsSubsequence(
                        "2025-03 (Box and leaflet): claimed 25 to 29\u00a0dB, measured 22.4\u00a0dB",
                        ", fail; 2026-05-04 (Product page, saved copy): claimed 19 to 25\u00a0dB",
                        ", pass; 2026-08-19");
        List<SvgText> dates = SvgText.all(svg).stream()
                .filter(text -> text.text().matches("20\\d\\d-.*"))
                .toList();
        assertThat(dates).extracting(SvgText::text).containsExactly("2025-03", "2026-05-04", "2026-08-19");
        // 2025-03 stands at its middle: 415 days to 2026-05-04, and 107 more to 2026-08-19.
        double first = dates.get(1).x() - dates.get(0).x();
        double second = dates.get(2).x() - dates.get(1).x();
        assertThat(first / second).isCloseTo(415 / 107.0, org.assertj.core.api.Assertions.within(0.01));
    }

    @Test
    void aMonthOrAYearStandsAtItsMiddle() {
        assertThat(EditionFigure.day("2026")).isEqualTo("2026-07-01");
        assertThat(EditionFigure.day("2026-03")).isEqualTo("2026-03-15");
        assertThat(EditionFigure.day("2026-03-02")).isEqualTo("2026-03-02");
    }

    @Test
    void everyTraceHasItsRing() {
        String svg = svg("attack_traces.svg");
        assertThat(count(svg, "<polyline")).isEqualTo(3);
        assertThat(count(svg, "r=\"6.5\"")).isEqualTo(3);
        assertThat(words(svg))
                .contains("Time after the step (ms)")
                .contains("Level (dB SPL)")
                .contains("mean 34.0");
    }

    @Test
    void everyKindIsThere() {
        assertThat(FigureSamples.models().stream()
                        .map(model -> model.get("kind"))
                        .distinct())
                .containsExactlyInAnyOrder("curve", "range", "margin", "series", "editions", "levels", "trace");
    }

    @Test
    void openEarAndInPlaceAreNamed() {
        assertThat(words(svg("skerry-tide_levels_1.svg")))
                .contains("open ear", "in place", "flood, pink-94", "A line for each ear (crew-01-left;");
    }

    @Test
    void eightSettingsWithThirtyInsertionsAreStillTold() {
        Map<String, String> files = ManyCells.drawn(8, 30);
        String curves = files.get("figures/skerry-tide-flood.svg");
        assertThat(words(curves)).contains("setting-1", "setting-8", "Means only");
        assertThat(count(curves, "<polyline")).isEqualTo(8);
        String few = ManyCells.drawn(2, 30).get("figures/skerry-tide-flood.svg");
        assertThat(count(few, "<polyline")).isEqualTo(2 * 30 + 2);
        assertThat(count(few, "stroke-opacity=\"0.35\"")).isEqualTo(60);
        assertThat(words(few)).contains("thin: each insertion");
    }

    @Test
    void ofALotTheWorstAreShownAndTheFigureSaysSo() {
        Map<String, String> files = ManyCells.drawn(60, 3);
        assertThat(words(files.get("figures/skerry-tide-flood_value.svg"))).contains("The 12 least probable of 60.");
        assertThat(files.values()).allSatisfy(svg -> assertThat(words(svg)).doesNotContain("of 12."));
    }

    @Test
    void namesThatMeanHarmAreWords() {
        String name = "<script>alert(1)</script> & \"e\"";
        String svg = ManyCells.drawn(List.of(ManyCells.cell(name, 18, 3), ManyCells.cell("plain", 15, 3)))
                .get("figures/skerry-tide-flood.svg");
        assertThat(SvgText.parsed(svg).getElementsByTagName("script").getLength())
                .isZero();
        assertThat(alt(svg)).contains(name + " between");
        assertThat(words(svg)).contains("<script");
    }

    @Test
    void theDarkSchemeIsInTheFileAndNotInItsRaster() {
        assertThat(DRAWN).isNotEmpty().allSatisfy((path, svg) -> {
            assertThat(svg).contains("@media screen and (prefers-color-scheme:dark)");
            String plain = Raster.plain(svg, "SansSerif");
            assertThat(plain).doesNotContain("<style>").contains("font-family=\"SansSerif\"");
            assertThat(SvgText.all(plain)).isEqualTo(SvgText.all(svg));
        });
    }

    @Test
    void allKindsAreDrawnAsPng() {
        for (String end : List.of("_claims.svg", "_editions_1.svg", "_levels_1.svg", "_series.svg", "_traces.svg")) {
            assertThat(Raster.png(end, svg(end))).startsWith(0x89, 'P', 'N', 'G');
        }
    }

    @Test
    void sameDataSameBytes() {
        assertThat(FigureSamples.drawn()).isEqualTo(DRAWN);
    }
}
