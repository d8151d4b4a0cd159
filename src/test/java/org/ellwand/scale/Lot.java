package org.ellwand.scale;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;

/**
 * A production lot of an invented earplug on an ear simulator: every unit under four settings, three insertions each, in
 * 31 third-octave bands. Level = open ear − attenuation of the setting + error of the unit + error of the insertion + error
 * of the reading, each normal and independent, those of unit and insertion the same in all bands. The same sizes give the
 * same bytes on every machine.
 *
 * @param firmware of all units
 * @param firstUnit number of the first unit
 * @param units how many
 * @param shiftDb added to the attenuation under every setting
 * @param seed of the errors
 */
public record Lot(String firmware, int firstUnit, int units, double shiftDb, long seed) {
    public static final List<String> SETTINGS = List.of("calm", "ebb", "flood", "storm");
    public static final int INSERTIONS = 3;
    static final double UNIT_DB = 0.5;
    static final double INSERTION_DB = 0.8;
    static final double READING_DB = 0.3;
    private static final String PRODUCT = "Skerry Lot";
    private static final int UNIFORMS = 12;
    private static final List<Band> BANDS = IntStream.rangeClosed(-17, 13)
            .mapToObj(index -> new Band(Resolution.THIRD_OCTAVE, index))
            .toList();
    private static final List<String> FREQUENCIES = BANDS.stream()
            .map(band -> String.format(Locale.ROOT, "%s", band.nominalHz()).replaceAll("\\.0$", ""))
            .toList();

    /** Rows below the header, those of the open ear included. */
    public static long rows(int units) {
        return BANDS.size() * (1L + (long) units * SETTINGS.size() * INSERTIONS);
    }

    /** Attenuation of a setting in dB before any error: rises with frequency, with a bend at 2 kHz. */
    static double attenuationDb(int setting, Band band) {
        double octaves = Math.log(band.exactHz() / 1000) / Math.log(2);
        return 8 + 5 * setting + 1.5 * octaves - 0.4 * Math.abs(octaves - 1);
    }

    private static double openEarDb(Band band) {
        double octaves = Math.log(band.exactHz() / 2700) / Math.log(2);
        return 80 + 16 / (1 + octaves * octaves);
    }

    /** Writes the sheet, the open ear first. */
    public void write(Path file) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("device,setting,unit,firmware,stimulus,insertion,frequency (Hz),level (dB SPL)\n");
            for (int b = 0; b < BANDS.size(); b++) {
                row(out, "open ear,,,,pink-94,,", b, openEarDb(BANDS.get(b)));
            }
            IntStream.range(firstUnit, firstUnit + units).forEach(unit -> write(out, unit));
        }
    }

    /** A unit's errors are its own, whatever else is in the lot. */
    private void write(Writer out, int unit) {
        SplittableRandom random = new SplittableRandom(seed * 1_000_003 + unit);
        double unitDb = UNIT_DB * normal(random);
        double[] insertionDb = IntStream.range(0, INSERTIONS)
                .mapToDouble(i -> INSERTION_DB * normal(random))
                .toArray();
        String name = String.format(Locale.ROOT, "SN-%05d", unit);
        for (int setting = 0; setting < SETTINGS.size(); setting++) {
            for (int insertion = 0; insertion < INSERTIONS; insertion++) {
                String conditions = PRODUCT + "," + SETTINGS.get(setting) + "," + name + "," + firmware + ",pink-94,"
                        + (insertion + 1) + ",";
                for (int b = 0; b < BANDS.size(); b++) {
                    Band band = BANDS.get(b);
                    double errorDb = unitDb + insertionDb[insertion] + READING_DB * normal(random);
                    row(out, conditions, b, openEarDb(band) - attenuationDb(setting, band) - shiftDb + errorDb);
                }
            }
        }
    }

    private static void row(Writer out, String conditions, int band, double levelDb) {
        long thousandths = Math.round(levelDb * 1000);
        try {
            out.write(conditions + FREQUENCIES.get(band) + "," + thousandths / 1000 + "."
                    + String.valueOf(1000 + thousandths % 1000).substring(1) + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A sum of uniforms, which is near enough to normal and the same on every machine. */
    private static double normal(SplittableRandom random) {
        double sum = -UNIFORMS / 2.0;
        for (int i = 0; i < UNIFORMS; i++) {
            sum += random.nextDouble();
        }
        return sum;
    }
}
