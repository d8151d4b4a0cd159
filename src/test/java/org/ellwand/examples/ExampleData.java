package org.ellwand.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** Writes the sheets of the examples into {@code measurements/examples/} and {@code claims/examples/}. */
public final class ExampleData {
    private ExampleData() {}

    public static void main(String[] arguments) throws IOException {
        Errors errors = arguments.length > 1 ? Errors.valueOf(arguments[1]) : Errors.AS_DECLARED;
        write(Path.of(arguments.length == 0 ? "." : arguments[0]), errors);
    }

    static void write(Path folder, Errors errors) throws IOException {
        for (Map.Entry<String, String> file : files(errors).entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
    }

    /** Text of every sheet by its path. */
    static Map<String, String> files(Errors errors) {
        Map<String, String> sheets = new TreeMap<>(EarplugData.sheets(errors));
        sheets.putAll(EarmuffData.sheets(errors));
        sheets.putAll(FilteredPlugData.sheets(errors));
        sheets.putAll(HearingAidData.sheets(errors));
        sheets.putAll(InEarMonitorData.sheets(errors));
        sheets.putAll(BenchData.sheets(errors));
        sheets.putAll(TraceData.sheets());
        Map<String, String> files = new TreeMap<>();
        sheets.forEach((name, text) -> files.put("measurements/examples/" + name, text));
        files.put("claims/examples/hearing-target.csv", HearingAidData.target());
        files.put("claims/examples/house-curve.csv", InEarMonitorData.target());
        return files;
    }
}
