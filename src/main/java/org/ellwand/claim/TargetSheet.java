package org.ellwand.claim;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;
import org.ellwand.input.Separator;

/**
 * Reads a target curve: columns {@code frequency} and {@code level}, whose units may follow in the header. Cells are separated
 * by commas, semicolons or tabs; where not by commas, numbers may have decimal commas. The curve is of the first resolution
 * whose bands hold every frequency: third octaves, octaves, sixths, twelfths.
 */
final class TargetSheet {
    private static final Pattern HEADER =
            Pattern.compile("(?i:(frequency|level))(?:\\s*[\\[(]\\s*(.*?)\\s*[\\])]|\\s+(.+))?");
    private static final List<Resolution> RESOLUTIONS =
            List.of(Resolution.THIRD_OCTAVE, Resolution.OCTAVE, Resolution.SIXTH_OCTAVE, Resolution.TWELFTH_OCTAVE);

    /** Frequencies are printed rounded: within half a percent of the nominal or the exact one they are meant. */
    private static final double ROUNDING = 0.005;

    private final String file;
    private final char separator;
    private final Problems problems = new Problems();
    private char mark;

    /** A column of the sheet. */
    private record Column(String name, int index, Unit unit) {}

    private TargetSheet(String file, char separator) {
        this.file = file;
        this.separator = separator;
    }

    static Spectrum read(String file, byte[] bytes) throws InputException {
        String text = text(file, bytes);
        char separator = Separator.of(
                text.lines().filter(line -> !line.isBlank()).findFirst().orElse(""));
        return new TargetSheet(file, separator).spectrum(text);
    }

    private static String text(String file, byte[] bytes) throws InputException {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new InputException(Place.ofFile(file), "not UTF-8 text: save the file as UTF-8");
        }
    }

    private List<CsvRecord> records(String text) throws InputException {
        try {
            return CsvReader.builder()
                    .fieldSeparator(separator)
                    .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .ofCsvRecord(text)
                    .stream()
                    .toList();
        } catch (CsvParseException e) {
            throw new InputException(Place.ofFile(file), "not readable as CSV: " + e.getMessage());
        }
    }

    private Spectrum spectrum(String text) throws InputException {
        List<CsvRecord> records = records(text);
        if (records.size() < 2) {
            throw new InputException(
                    Place.ofFile(file), "a target needs a header (frequency, level) and a line a band");
        }
        CsvRecord header = records.get(0);
        Column frequency = column(header, "frequency", Unit.HZ, "Hz or kHz");
        Column level = column(header, "level", Unit.DB, "dB, dB SPL, dB(A) or dB(C)");
        Map<Double, Double> levelDbByHz = new TreeMap<>();
        for (CsvRecord record : records.subList(1, records.size())) {
            if (record.getFieldCount() > header.getFieldCount()) {
                problems.add(place(record), tooMany(record, header));
            } else {
                add(levelDbByHz, number(record, frequency), number(record, level), place(record));
            }
        }
        problems.throwIfAny();
        return fitted(levelDbByHz);
    }

    private String tooMany(CsvRecord record, CsvRecord header) {
        return "the row has " + record.getFieldCount() + " cells, the header " + header.getFieldCount()
                + (separator == ',' ? Separator.NO_DECIMAL_COMMAS : "");
    }

    /**
     * The column of a name.
     *
     * @param plain its unit where the header names none
     * @param accepted units, for a message
     */
    private Column column(CsvRecord header, String name, Unit plain, String accepted) throws InputException {
        Optional<Column> found = Optional.empty();
        for (int i = 0; i < header.getFieldCount(); i++) {
            Matcher matcher = HEADER.matcher(header.getField(i).strip());
            if (matcher.matches() && matcher.group(1).toLowerCase(Locale.ROOT).equals(name)) {
                if (found.isPresent()) {
                    throw new InputException(place(header), "the column '" + name + "' stands twice");
                }
                found = Optional.of(new Column(name, i, unit(matcher, plain)));
            }
        }
        Column column = found.orElseThrow(() -> new InputException(
                place(header),
                "there is no column '" + name + "' in the header: a target has the columns frequency and level"));
        boolean fits = column.unit.dimension() == plain.dimension() || (plain == Unit.DB && column.unit.isLevel());
        if (!fits) {
            throw new InputException(
                    place(header),
                    "the column '" + header.getField(column.index).strip() + "' is not in " + accepted);
        }
        return column;
    }

    private static Unit unit(Matcher header, Unit plain) {
        return Optional.ofNullable(header.group(2))
                .or(() -> Optional.ofNullable(header.group(3)))
                .filter(spelling -> !spelling.isEmpty())
                .map(spelling -> Unit.spelled(spelling)
                        .or(() -> Unit.resembling(spelling))
                        .orElse(Unit.NONE))
                .orElse(plain);
    }

    private void add(Map<Double, Double> levels, Optional<Double> hz, Optional<Double> level, Place place) {
        if (hz.isEmpty() || level.isEmpty()) {
            return;
        }
        if (hz.get() <= 0) {
            problems.add(place, "a frequency is above 0 Hz");
        } else if (levels.put(hz.get(), level.get()) != null) {
            problems.add(place, "this frequency stands here a second time");
        }
    }

    private Optional<Double> number(CsvRecord record, Column column) {
        boolean there = column.index < record.getFieldCount();
        String cell = there ? record.getField(column.index).strip() : "";
        if (cell.isEmpty()) {
            problems.add(place(record), "this line has no " + column.name);
            return Optional.empty();
        }
        try {
            return Optional.of(number(cell, column.unit));
        } catch (PhraseException | IllegalArgumentException e) {
            problems.add(place(record), "column '" + column.name + "': " + e.getMessage());
            return Optional.empty();
        }
    }

    /** In Hz, or in the unit of the levels. */
    private double number(String cell, Unit ofColumn) throws PhraseException {
        Amount amount = Phrases.amount(withPoint(cell));
        Unit unit = amount.unit() == Unit.NONE ? ofColumn : amount.unit();
        return unit.convert(amount.value(), ofColumn.dimension() == Dimension.FREQUENCY ? Unit.HZ : ofColumn);
    }

    /** One sheet keeps to commas or to points, because 1.250 beside 65,3 might be a thousand. */
    private String withPoint(String cell) throws PhraseException {
        boolean comma = separator != ',' && cell.indexOf(',') >= 0;
        if (comma || cell.indexOf('.') >= 0) {
            char own = comma ? ',' : '.';
            if (mark != 0 && mark != own) {
                throw new PhraseException("'" + cell + "': the sheet has decimal commas and decimal points, of which it"
                        + " keeps to one");
            }
            mark = own;
        }
        return comma ? cell.replace(',', '.') : cell;
    }

    private Spectrum fitted(Map<Double, Double> levelDbByHz) throws InputException {
        for (Resolution resolution : RESOLUTIONS) {
            boolean fits = levelDbByHz.keySet().stream().allMatch(hz -> isBand(resolution, hz));
            long bands = levelDbByHz.keySet().stream()
                    .map(hz -> Band.nearest(resolution, hz))
                    .distinct()
                    .count();
            if (fits && bands == levelDbByHz.size()) {
                return Spectrum.of(resolution, levelDbByHz);
            }
        }
        throw new InputException(
                Place.ofFile(file),
                "the frequencies are not band centres of third octaves, octaves, sixth or twelfth octaves");
    }

    private static boolean isBand(Resolution resolution, double hz) {
        Band band = Band.nearest(resolution, hz);
        return Math.abs(hz / band.nominalHz() - 1) <= ROUNDING || Math.abs(hz / band.exactHz() - 1) <= ROUNDING;
    }

    private Place place(CsvRecord record) {
        return new Place(file, (int) record.getStartingLineNumber(), 0);
    }
}
