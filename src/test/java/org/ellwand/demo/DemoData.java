package org.ellwand.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes the curve sheets of the demo into {@code measurements/}, or into the folder named. */
final class DemoData {
    private static final Sound QUIET = Sound.quiet();
    private static final List<Sound> PINK = List.of(Sound.pinkNoise(62), Sound.pinkNoise(76), Sound.pinkNoise(94));
    private static final Sound MUSIC = Sound.music(97);
    private static final Sound SOFT_MUSIC = Sound.music(77);

    private static final Programme TIDE = new Programme(joined(PINK, SOFT_MUSIC, QUIET), joined(PINK, MUSIC, QUIET));
    private static final List<Sound> LOUD_PINK = PINK.subList(2, 3);
    private static final Programme SKERRY =
            new Programme(joined(LOUD_PINK, SOFT_MUSIC, QUIET), joined(LOUD_PINK, MUSIC, QUIET));

    private DemoData() {}

    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments.length == 0 ? "measurements" : arguments[0]));
    }

    static void write(Path folder) throws IOException {
        for (Map.Entry<String, String> sheet : sheets().entrySet()) {
            Files.writeString(folder.resolve(sheet.getKey()), sheet.getValue());
        }
    }

    /** Text of every sheet by file name. */
    static Map<String, String> sheets() {
        Map<String, String> sheets = new LinkedHashMap<>();
        Device tide = new LevelDependentPlug();
        Device skerry = new FilteredPlug();
        sheets.put("tide-crew-01.csv", RowSheet.write(all(TIDE, new Sitting(Ear.CREW_01, tide, 20260611))));
        sheets.put("tide-crew-02.csv", RowSheet.write(all(TIDE, new Sitting(Ear.CREW_02, tide, 20260612))));
        sheets.put("skerry-crew-01.csv", RowSheet.write(all(SKERRY, new Sitting(Ear.CREW_01, skerry, 20260618))));
        columns(sheets, new Sitting(Ear.CREW_02, skerry, 20260619));
        return sheets;
    }

    private static void columns(Map<String, String> sheets, Sitting sitting) {
        List<Curve> without = new ArrayList<>(SKERRY.outside(sitting));
        without.addAll(SKERRY.openEar(sitting));
        sheets.put("skerry-crew-02-open.csv", ColumnSheet.write(without));
        for (Fit fit : Fit.values()) {
            sheets.put("skerry-crew-02-" + fit.label() + ".csv", ColumnSheet.write(SKERRY.inPlace(sitting, fit)));
        }
    }

    private static List<Curve> all(Programme programme, Sitting sitting) {
        List<Curve> curves = new ArrayList<>(programme.outside(sitting));
        curves.addAll(programme.openEar(sitting));
        for (Fit fit : Fit.values()) {
            curves.addAll(programme.inPlace(sitting, fit));
        }
        return curves;
    }

    private static List<Sound> joined(List<Sound> some, Sound... more) {
        List<Sound> all = new ArrayList<>(some);
        all.addAll(List.of(more));
        return all;
    }
}
