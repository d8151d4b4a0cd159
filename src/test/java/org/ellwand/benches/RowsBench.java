package org.ellwand.benches;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SessionReader;
import org.ellwand.scale.Lot;
import org.ellwand.scale.LotFolder;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** A sheet of 100 units (37 231 rows) read into readings, beside the bare library with its numbers parsed and nothing kept. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class RowsBench {
    private static final int UNITS = 100;
    private static final int LEVEL = 7;

    private Path folder = Path.of("");

    @Setup
    public void write() throws IOException {
        folder = Files.createTempDirectory("rows");
        LotFolder.write(folder, LotFolder.CLAIMS, List.of(new Lot("2.0", 1, UNITS, 0, 1)));
    }

    @TearDown
    public void clear() throws IOException {
        for (String file : List.of("claims/lot.yaml", "measurements/lot-1.yaml", "measurements/lot-1.csv")) {
            Files.delete(folder.resolve(file));
        }
        for (String below : List.of("claims", "measurements", "")) {
            Files.delete(folder.resolve(below));
        }
    }

    @Benchmark
    public Session ours() throws InputException {
        return SessionReader.read(folder, "measurements/lot-1.yaml");
    }

    @Benchmark
    public double insteadBareLibrary() throws IOException {
        double sum = 0;
        try (CsvReader<CsvRecord> rows = CsvReader.builder().ofCsvRecord(folder.resolve("measurements/lot-1.csv"))) {
            for (CsvRecord row : rows) {
                sum += row.getStartingLineNumber() > 1 ? Double.parseDouble(row.getField(LEVEL)) : 0;
            }
        }
        return sum;
    }
}
