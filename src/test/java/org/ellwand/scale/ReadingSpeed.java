package org.ellwand.scale;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;

/**
 * How fast a session is read, or the same sheet by the library for separated values alone, which only hands over the cells of
 * every row as texts. On one thread; processor time, so that other work on the machine counts for little. Each has a machine
 * of its own: code that both share would be compiled for both.
 */
public final class ReadingSpeed {
    private ReadingSpeed() {}

    /** What is timed. */
    private interface Reading {
        void read() throws IOException, InputException;
    }

    /** {@code ReadingSpeed FOLDER RUNS library|session}: the median of that many runs, in seconds, for the session {@code lot-1}. */
    public static void main(String[] args) throws IOException, InputException {
        Path folder = Path.of(args[0]);
        Reading reading = args[2].equals("library")
                ? () -> rows(folder.resolve("measurements/lot-1.csv"))
                : () -> SessionReader.read(folder, "measurements/lot-1.yaml");
        double[] seconds = new double[Integer.parseInt(args[1])];
        for (int r = 0; r < seconds.length; r++) {
            seconds[r] = seconds(reading);
        }
        System.out.println(median(seconds));
    }

    private static void rows(Path sheet) throws IOException {
        long characters = 0;
        try (CsvReader<CsvRecord> rows = CsvReader.builder().ofCsvRecord(sheet)) {
            for (CsvRecord row : rows) {
                for (int cell = 0; cell < row.getFieldCount(); cell++) {
                    characters += row.getField(cell).length();
                }
            }
        }
        if (characters == 0) {
            throw new IllegalStateException("the sheet is empty");
        }
    }

    private static double seconds(Reading reading) throws IOException, InputException {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();
        reading.read();
        return (threads.getCurrentThreadCpuTime() - before) / 1e9;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }
}
