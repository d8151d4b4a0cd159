package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The colours of the figures, as the template gives them. */
class FigureColoursTest {
    /**
     * Simulated colour vision: matrices for linear sRGB at full severity of Machado, Oliveira and Fernandes, "A
     * physiologically-based model for simulation of color vision deficiency", IEEE Trans. Vis. Comput. Graph. 15 (2009)
     * (read in a public library's table).
     */
    private static final Map<String, double[][]> VISION = Map.of(
            "all three cones", new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
            "protanopia",
                    new double[][] {
                        {0.152286, 1.052583, -0.204868},
                        {0.114503, 0.786281, 0.099216},
                        {-0.003882, -0.048116, 1.051998}
                    },
            "deuteranopia",
                    new double[][] {
                        {0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}
                    },
            "tritanopia",
                    new double[][] {
                        {1.255528, -0.076749, -0.178779},
                        {-0.078411, 0.930809, 0.147602},
                        {0.004733, 0.691367, 0.303900}
                    });

    /** CIE 1976 L*a*b* distance; about 2.3 is just noticeable side by side (from memory), and lines are thin. */
    private static final double LEAST_DISTANCE = 18;

    private static String scheme(String name) throws IOException {
        String style = Files.readString(Path.of("templates/figure-style.ftl"));
        int from = style.indexOf("<#assign " + name + " ");
        return style.substring(from, style.indexOf("]}>", from));
    }

    private static List<String> lines(String name) throws IOException {
        String all = scheme(name);
        return colours(all.substring(all.indexOf("\"lines\"")));
    }

    private static List<String> colours(String text) {
        return Pattern.compile("#[0-9a-f]{6}")
                .matcher(text)
                .results()
                .map(found -> found.group())
                .toList();
    }

    private static String named(String scheme, String name) throws IOException {
        String all = scheme(scheme);
        return colours(all.substring(all.indexOf("\"" + name + "\""))).get(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void linesKeepTheirDistanceForAllKindsOfColourVision(String scheme) throws IOException {
        List<String> lines = lines(scheme);
        assertThat(lines).hasSize(6);
        VISION.forEach((vision, matrix) -> {
            List<double[]> seen = lines.stream()
                    .map(colour -> lab(times(matrix, linear(colour))))
                    .toList();
            for (int i = 0; i < seen.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(distance(seen.get(i), seen.get(j)))
                            .as(vision + ": " + lines.get(i) + " and " + lines.get(j))
                            .isGreaterThan(LEAST_DISTANCE);
                }
            }
        });
    }

    /** WCAG 2.2, 1.4.11 asks 3 : 1 of graphics and 1.4.3 4.5 : 1 of text (from memory). */
    @ParameterizedTest
    @CsvSource({"light, #fcfbf8", "dark, #17191c"})
    void everythingStandsOutFromItsGround(String scheme, String page) throws IOException {
        List<String> grounds = List.of(named(scheme, "paper"), named(scheme, "claimed"), page);
        for (String ground : grounds) {
            for (String line : lines(scheme)) {
                assertThat(contrast(line, ground)).as(line + " on " + ground).isGreaterThanOrEqualTo(3);
            }
            assertThat(contrast(named(scheme, "ink"), ground)).isGreaterThanOrEqualTo(4.5);
        }
    }

    /** Values of both formulas worked out elsewhere: black on white is 21 : 1 by definition, and white has L* 100. */
    @ParameterizedTest
    @CsvSource({"#000000, #ffffff, 21", "#777777, #ffffff, 4.48"})
    void contrastIsThatOfTheGuideline(String one, String other, double expected) {
        assertThat(contrast(one, other)).isCloseTo(expected, org.assertj.core.api.Assertions.within(0.01));
        assertThat(lab(linear("#ffffff"))[0]).isCloseTo(100, org.assertj.core.api.Assertions.within(0.01));
        // L*, a*, b* of pure red in sRGB (D65), as tables give it: 53.24, 80.09, 67.20 (from memory).
        assertThat(distance(lab(linear("#ff0000")), new double[] {53.24, 80.09, 67.20}))
                .isLessThan(0.1);
    }

    @org.junit.jupiter.api.Test
    void linesDifferWithoutColourToo() {
        String svg = ManyCells.drawn(8, 1).values().stream()
                .filter(text -> text.contains("Frequency"))
                .findFirst()
                .orElseThrow();
        List<String> looks = new ArrayList<>();
        Pattern.compile("<polyline class=\"e-line-(\\d)\"[^>]*?(stroke-dasharray=\"[^\"]*\")?/>")
                .matcher(svg)
                .results()
                .forEach(line -> looks.add(line.group(1) + line.group(2)));
        assertThat(looks).hasSize(8).doesNotHaveDuplicates();
    }

    private static double contrast(String one, String other) {
        double[] both = Stream.of(one, other)
                .mapToDouble(colour -> luminance(linear(colour)) + 0.05)
                .sorted()
                .toArray();
        return both[1] / both[0];
    }

    private static double luminance(double[] rgb) {
        return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    }

    /** IEC 61966-2-1. */
    private static double[] linear(String colour) {
        double[] rgb = new double[3];
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            rgb[i] = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
        return rgb;
    }

    private static double[] times(double[][] matrix, double[] rgb) {
        double[] seen = new double[3];
        for (int i = 0; i < 3; i++) {
            double sum = matrix[i][0] * rgb[0] + matrix[i][1] * rgb[1] + matrix[i][2] * rgb[2];
            seen[i] = Math.min(1, Math.max(0, sum));
        }
        return seen;
    }

    /** CIE 1976 L*a*b* for D65. */
    private static double[] lab(double[] rgb) {
        double x = f((0.4124564 * rgb[0] + 0.3575761 * rgb[1] + 0.1804375 * rgb[2]) / 0.95047);
        double y = f(0.2126729 * rgb[0] + 0.7151522 * rgb[1] + 0.0721750 * rgb[2]);
        double z = f((0.0193339 * rgb[0] + 0.1191920 * rgb[1] + 0.9503041 * rgb[2]) / 1.08883);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double f(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double distance(double[] a, double[] b) {
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }
}
