package org.ellwand.claim;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.PhraseException;

/** Reads what a response is compared with: the open ear, or a curve sheet in {@code claims/}. */
final class TargetReader {
    private static final double NEAR = 0.02;

    private final Path claims;
    private final SortedSet<String> read = new TreeSet<>();

    /**
     * @param claims the folder of the claims files
     */
    TargetReader(Path claims) {
        this.claims = claims;
    }

    /** Sheets that were read, as paths below the audited folder. */
    SortedSet<String> sheets() {
        return read;
    }

    Target read(String text) throws PhraseException {
        if (text.equals("open ear")) {
            return new Target.OpenEar();
        }
        try {
            Path sheet = claims.resolve(text);
            if (!Files.isRegularFile(sheet)) {
                throw new PhraseException(
                        "'" + text + "' is not there: a curve sheet in claims/ or 'open ear' is expected");
            }
            if (!sheet.toRealPath().startsWith(claims.toRealPath())) {
                throw new PhraseException("'" + text + "' leads out of claims/");
            }
            Spectrum curve = curve(text, sheet);
            read.add("claims/" + text);
            return new Target.Sheet("claims/" + text, curve);
        } catch (IOException e) {
            throw new PhraseException("'" + text + "' cannot be read: " + e.getMessage());
        }
    }

    private static Spectrum curve(String name, Path sheet) throws IOException, PhraseException {
        SortedMap<Double, Double> levels = new TreeMap<>();
        try (CsvReader<CsvRecord> rows =
                CsvReader.builder().detectBomHeader(true).ofCsvRecord(sheet)) {
            boolean header = true;
            for (CsvRecord row : rows) {
                if (header) {
                    refuseHeader(name, row);
                    header = false;
                } else {
                    levels.put(number(name, row, 0), number(name, row, 1));
                }
            }
        }
        return spectrum(name, levels);
    }

    private static void refuseHeader(String name, CsvRecord row) throws PhraseException {
        List<String> fields = new ArrayList<>();
        row.getFields().forEach(f -> fields.add(f.strip().toLowerCase(Locale.ROOT)));
        boolean fits = fields.size() == 2
                && fields.get(0).matches("frequency( ?[(\\[]hz[)\\]])?")
                && fields.get(1).matches("level( ?[(\\[]db( spl)?[)\\]])?");
        if (!fits) {
            throw new PhraseException("'" + name + "' line " + row.getStartingLineNumber()
                    + ": the columns 'frequency (Hz)' and 'level (dB)' are expected, not " + String.join(", ", fields));
        }
    }

    private static double number(String name, CsvRecord row, int column) throws PhraseException {
        try {
            double value = Double.parseDouble(row.getField(column).strip());
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            // told below, with the place
        }
        throw new PhraseException("'" + name + "' line " + row.getStartingLineNumber() + " column " + (column + 1)
                + ": a number is expected");
    }

    private static Spectrum spectrum(String name, SortedMap<Double, Double> levels) throws PhraseException {
        for (Resolution resolution : List.of(
                Resolution.THIRD_OCTAVE, Resolution.OCTAVE, Resolution.SIXTH_OCTAVE, Resolution.TWELFTH_OCTAVE)) {
            if (!levels.isEmpty() && levels.keySet().stream().allMatch(hz -> fits(resolution, hz))) {
                return Spectrum.of(resolution, levels);
            }
        }
        throw new PhraseException(
                "'" + name + "': the frequencies fit neither third octaves, octaves, sixths nor twelfths");
    }

    private static boolean fits(Resolution resolution, double hz) {
        if (!(hz > 0)) {
            return false;
        }
        Band band = Band.nearest(resolution, hz);
        return near(hz, band.nominalHz()) || near(hz, band.exactHz());
    }

    private static boolean near(double hz, double band) {
        return Math.abs(hz / band - 1) <= NEAR;
    }
}
