package org.ellwand.claim;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
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

/**
 * Reads a target curve: columns {@code frequency} and {@code level}, whose units may follow in the header. The curve is
 * of the first resolution whose bands hold every frequency: third octaves, octaves, sixths, twelfths.
 */
final class TargetSheet {
    private static final Pattern HEADER = Pattern.compile("(frequency|level)\\s*[\\[(]?\\s*(.*?)\\s*[\\])]?");
    private static final List<Resolution> RESOLUTIONS =
            List.of(Resolution.THIRD_OCTAVE, Resolution.OCTAVE, Resolution.SIXTH_OCTAVE, Resolution.TWELFTH_OCTAVE);

    /** Frequencies are printed rounded: within half a percent of the nominal or the exact one they are meant. */
    private static final double ROUNDING = 0.005;

    private final String file;
    private final Problems problems = new Problems();

    private TargetSheet(String file) {
        this.file = file;
    }

    static Spectrum read(String file, byte[] bytes) throws InputException {
        return new TargetSheet(file).spectrum(records(file, bytes));
    }

    private static List<CsvRecord> records(String file, byte[] bytes) throws InputException {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return CsvReader.builder().ofCsvRecord(text.startsWith("\uFEFF") ? text.substring(1) : text).stream()
                    .toList();
        } catch (CharacterCodingException e) {
            throw new InputException(Place.ofFile(file), "not UTF-8 text: save the file as UTF-8");
        } catch (CsvParseException e) {
            throw new InputException(Place.ofFile(file), "not readable as CSV: " + e.getMessage());
        }
    }

    private Spectrum spectrum(List<CsvRecord> records) throws InputException {
        if (records.size() < 2) {
            throw new InputException(
                    Place.ofFile(file), "a target needs a header (frequency, level) and a line a band");
        }
        CsvRecord header = records.get(0);
        Column frequency = column(header, "frequency", Unit.HZ, Dimension.FREQUENCY);
        Column level = column(header, "level", Unit.DB, Dimension.LEVEL_DIFFERENCE);
        Map<Double, Double> levelDbByHz = new TreeMap<>();
        for (CsvRecord record : records.subList(1, records.size())) {
            add(levelDbByHz, number(record, frequency), number(record, level), place(record));
        }
        problems.throwIfAny();
        return fitted(levelDbByHz);
    }

    private record Column(int index, Unit unit) {}

    private Column column(CsvRecord header, String name, Unit plain, Dimension dimension) throws InputException {
        for (int i = 0; i < header.getFieldCount(); i++) {
            Matcher matcher = HEADER.matcher(header.getField(i).strip());
            if (matcher.matches() && matcher.group(1).equals(name)) {
                String spelling = matcher.group(2);
                Unit unit = spelling.isEmpty() ? plain : Unit.spelled(spelling).orElse(Unit.NONE);
                if (unit.dimension() != dimension && !(plain == Unit.DB && unit.isLevel())) {
                    throw new InputException(place(header), "the column '" + name + "' is not in '" + spelling + "'");
                }
                return new Column(i, unit);
            }
        }
        throw new InputException(place(header), "the column '" + name + "' is missing");
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
        if (column.index() >= record.getFieldCount()) {
            problems.add(place(record), "this line has no value in column " + (column.index() + 1));
            return Optional.empty();
        }
        try {
            Amount amount = Phrases.amount(record.getField(column.index()));
            Unit base = column.unit().dimension() == Dimension.FREQUENCY ? Unit.HZ : column.unit();
            Unit unit = amount.unit() == Unit.NONE ? column.unit() : amount.unit();
            return Optional.of(unit.convert(amount.value(), base));
        } catch (PhraseException | IllegalArgumentException e) {
            problems.add(place(record), String.valueOf(e.getMessage()));
            return Optional.empty();
        }
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
