package org.ellwand.measurement;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.input.Separator;

/**
 * A data file of separated values, read row by row. The header line decides the separator: the one of tab, semicolon and
 * comma that it holds most of.
 *
 * @param text of the file, or of a part of it with all that stands above
 * @param file how messages name it
 * @param headerLine 1-based line of the header, 0 for the first line that is not empty
 */
record Sheet(SheetText text, String file, int headerLine, Found problems) {
    private static final int LONGEST_HEADER = 1_000_000;

    /** Characters of a cell. */
    private static final int LONGEST_CELL = 1_000_000;
    /** A reader goes back over the header and its line end, and looks one character further. */
    private static final int MARK = LONGEST_HEADER + 3;

    /** Hands every row to a user; reports what hinders it. */
    void read(SheetUser user) {
        try (BufferedReader opened = text.open()) {
            read(opened, user);
        } catch (InputException e) {
            e.problems().forEach(problem -> problems.add(problem.place(), problem.text()));
        } catch (CharacterCodingException e) {
            reportBadByte();
        } catch (IOException e) {
            problems.add(Place.ofFile(file), "cannot be read: " + e.getMessage());
        }
    }

    private void read(BufferedReader opened, SheetUser user) throws IOException, InputException {
        int linesAbove = skipToHeader(opened);
        opened.mark(MARK);
        String header = opened.readLine();
        if (header == null) {
            problems.add(
                    Place.ofFile(file),
                    linesAbove == 0 || headerLine == 0
                            ? "is empty; expected a header line and rows below it"
                            : "has no line " + headerLine + ", which should be its header");
            return;
        }
        refuseLong(header, linesAbove + 1);
        opened.reset();
        forgetMark(opened);
        char separator = Separator.of(header);
        SheetRow row = new SheetRow(linesAbove);
        try {
            readRows(rows(opened, separator, row), user, separator);
            user.end(row);
        } catch (CsvParseException e) {
            problems.add(
                    at(row.line()),
                    "a quote opens here or stands in a cell and is not closed as it should be, or a cell has over "
                            + LONGEST_CELL + " characters");
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** While a mark is kept, a reader copies what it hands on, from a buffer that grows to what the mark may go back over. */
    private static void forgetMark(BufferedReader opened) throws IOException {
        opened.mark(0);
    }

    private int skipToHeader(BufferedReader opened) throws IOException, InputException {
        int skipped = 0;
        if (headerLine > 0) {
            while (skipped < headerLine - 1 && opened.readLine() != null) {
                skipped++;
            }
            return skipped;
        }
        opened.mark(MARK);
        String line = opened.readLine();
        while (line != null && line.isBlank()) {
            skipped++;
            opened.mark(MARK);
            line = opened.readLine();
        }
        if (line != null) {
            refuseLong(line, skipped + 1);
            opened.reset();
        }
        return skipped;
    }

    private void refuseLong(String header, int line) throws InputException {
        if (header.length() > LONGEST_HEADER) {
            throw new InputException(
                    new Place(file, line, 0), "the header line is longer than " + LONGEST_HEADER + " characters");
        }
    }

    private static Iterator<SheetRow> rows(BufferedReader opened, char separator, SheetRow row) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .maxBufferSize(LONGEST_CELL)
                .build(row, opened)
                .iterator();
    }

    private void readRows(Iterator<SheetRow> rows, SheetUser user, char separator) {
        SheetRow header = rows.next();
        List<SheetColumn> columns = columns(header);
        if (!user.header(columns, header.line(), new SheetNumbers(separator != ','))) {
            return;
        }
        boolean any = false;
        while (rows.hasNext() && !problems.isEnough()) {
            SheetRow row = rows.next();
            if (!row.isBlank()) {
                any = true;
                use(row, columns.size(), user, separator);
            }
        }
        if (!any) {
            problems.add(Place.ofFile(file), "has a header and no row below it");
        }
    }

    /** Columns without a header at the right end are what spreadsheets leave behind; they must be empty. */
    private static List<SheetColumn> columns(SheetRow header) {
        List<SheetColumn> columns = new ArrayList<>();
        for (int i = 0; i < header.size(); i++) {
            columns.add(SheetColumn.of(header.text(i), i));
        }
        while (!columns.isEmpty() && columns.get(columns.size() - 1).isBlank()) {
            columns.remove(columns.size() - 1);
        }
        return columns;
    }

    private void use(SheetRow row, int columns, SheetUser user, char separator) {
        int cells = row.size();
        while (cells > columns && row.isEmpty(cells - 1)) {
            cells--;
        }
        if (cells == columns) {
            user.row(row);
        } else {
            String commas = separator == ',' && cells > columns ? Separator.NO_DECIMAL_COMMAS : "";
            problems.add(
                    at(row.line()),
                    "the row has " + cells + (cells == 1 ? " cell" : " cells") + ", the header " + columns + commas);
        }
    }

    private void reportBadByte() {
        try {
            problems.add(at(text.lineOfBadByte()), "is not UTF-8 text here; save the file as UTF-8");
        } catch (IOException e) {
            problems.add(Place.ofFile(file), "cannot be read: " + e.getMessage());
        }
    }

    private Place at(int line) {
        return new Place(file, line, 0);
    }
}
