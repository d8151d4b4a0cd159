package org.ellwand.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet that is read in parts says what it says when it is read whole, down to the lines; or is not read in parts. */
class SheetPartsTest {
    private static final int[] BANDS_HZ = {125, 250, 500, 1000, 2000, 4000, 8000};

    @TempDir
    Path folder;

    /** An invented sheet: units in which insertions alternate band by band, so that parts cut readings. */
    private static String rows(int units) {
        StringBuilder rows = new StringBuilder("device;unit;insertion;frequency (Hz);level (dB SPL)\n");
        for (int unit = 0; unit < units; unit++) {
            for (int hz : BANDS_HZ) {
                for (int insertion = 1; insertion <= 2; insertion++) {
                    rows.append(";SN-")
                            .append(unit)
                            .append(';')
                            .append(insertion)
                            .append(';')
                            .append(hz);
                    rows.append(';')
                            .append(60 + unit)
                            .append('.')
                            .append(insertion)
                            .append('\n');
                }
            }
        }
        return rows.toString();
    }

    private static SheetForm form(Found found) {
        return new SheetForm(
                "sheet.csv",
                Optional.of(Resolution.OCTAVE),
                "level",
                Optional.of(Unit.DB_SPL),
                Set.of("device", "unit", "insertion"),
                Set.of(),
                found);
    }

    private Path written(String text) throws IOException {
        return Files.writeString(folder.resolve("sheet.csv"), text);
    }

    private Optional<List<String>> inParts(String text, int headerLine, int bytes) throws IOException {
        return SheetParts.of(written(text), headerLine, bytes)
                .flatMap(parts -> parts.read("sheet.csv", SheetPartsTest::form))
                .map(SheetPartsTest::told);
    }

    private List<String> whole(String text, int headerLine) throws IOException {
        Found found = new Found();
        TidySheet sheet = new TidySheet(form(found));
        new Sheet(SheetText.of(written(text)), "sheet.csv", headerLine, found).read(sheet);
        assertThat(found.all()).isEmpty();
        return told(sheet);
    }

    private static List<String> told(TidySheet sheet) {
        List<String> told = new ArrayList<>();
        for (SheetCurve curve : sheet.curves()) {
            told.add(curve.line() + " " + curve.cells());
            SheetReading numbers = curve.numbers();
            for (int i = 0; i < numbers.size(); i++) {
                told.add(numbers.lineOf(i) + ": " + numbers.at(i) + " " + numbers.value(i));
            }
        }
        return told;
    }

    @ParameterizedTest
    @ValueSource(ints = {7, 64, 100, 333, 1000, 1500})
    void partsOfAnySizeSayWhatTheWholeSays(int bytes) throws IOException {
        String rows = rows(12);
        assertThat(inParts(rows, 0, bytes)).contains(whole(rows, 0));
    }

    @Test
    void lineEndsBlankLinesMarksAndLinesAboveTheHeaderCount() throws IOException {
        String rows = rows(12);
        List<String> dialects = List.of(
                rows.replace("\n", "\r\n"),
                rows.replace("\n", "\n\n"),
                rows.replace("\n", "\r\n;;;;\r\n"),
                "\uFEFF" + rows,
                "\uFEFF\n \n" + rows,
                rows.replace('.', ','),
                rows.stripTrailing(),
                rows + "\n\n\n");
        for (String dialect : dialects) {
            assertThat(inParts(dialect, 0, 100)).contains(whole(dialect, 0));
        }
        String below = "Invented\nby nobody\n" + rows;
        assertThat(inParts(below, 3, 100)).contains(whole(below, 3));
    }

    @Test
    void whatMayHoldLineEndsOrIsAmissIsNotReadInParts() throws IOException {
        String rows = rows(12);
        String last = ";SN-11;2;8000;71.2\n";
        assertThat(rows).endsWith(last);
        List<String> others = List.of(
                rows.replace('\n', '\r'),
                rows.replace("device", "\"device\""),
                rows.replace("SN-7", "\"SN-\n7\""),
                rows.replace("SN-11", "\"SN-11\""),
                rows + last,
                rows + ";SN-0;1;125;60.1\n",
                rows + ";SN-12;2;8000;71,2\n",
                rows + ";SN-12;2;8000;\"71.2\n",
                rows + ";SN-12;2;8001;loud\n",
                rows + ";SN-12;2\n");
        for (String other : others) {
            assertThat(inParts(other, 0, 100)).as(other).isEmpty();
        }
        assertThat(inParts(rows, 0, rows.length())).isEmpty();
        assertThat(inParts(rows, 2000, 100)).isEmpty();
    }

    /** Both marks stand once in different parts; whole, the sheet is refused, and so it is not read in parts. */
    @Test
    void partsKeepToOneDecimalMark() throws IOException {
        String rows = rows(12).replaceAll("\\.\\d", "");
        assertThat(inParts(rows, 0, 100)).contains(whole(rows, 0));
        String mixed = rows.replace("SN-0;1;125;60", "SN-0;1;125;60.1").replace("SN-11;2;8000;71", "SN-11;2;8000;71,2");
        assertThat(inParts(mixed, 0, 100)).isEmpty();
    }
}
