package org.ellwand.scale;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A folder to be audited that holds lots, each with its own firmware, in a session of its own, and claims about them. */
public final class LotFolder {
    private LotFolder() {}

    /** {@code LotFolder FOLDER UNITS} writes one lot with that many units. */
    public static void main(String[] args) throws IOException {
        write(Path.of(args[0]), CLAIMS, List.of(new Lot("2.0", 1, Integer.parseInt(args[1]), 0, 1)));
    }

    /** Writes claims, sessions and sheets. */
    public static void write(Path folder, String claims, List<Lot> lots) throws IOException {
        Files.createDirectories(folder.resolve("claims"));
        Files.createDirectories(folder.resolve("measurements"));
        Files.writeString(folder.resolve("claims/lot.yaml"), claims);
        for (int i = 0; i < lots.size(); i++) {
            String id = "lot-" + (i + 1);
            Files.writeString(folder.resolve("measurements/" + id + ".yaml"), session(id));
            lots.get(i).write(folder.resolve("measurements/" + id + ".csv"));
        }
    }

    private static String session(String id) {
        return """
                session: %1$s
                product: Skerry Lot
                ear: ear simulator
                resolution: third-octave
                levels in: dB SPL
                settings switched: in place
                stimuli:
                  pink-94: {kind: pink noise, level: 94 dB SPL}
                uncertainty:
                  - {cause: calibration, size: 0.3 dB, shared by: session}
                  - {cause: insertion, size: 0.8 dB, shared by: insertion}
                  - {cause: reading, size: 0.3 dB, shared by: reading, across bands: independent}
                  - {cause: unit, size: 0.5 dB, shared by: unit}
                data:
                  - {file: %1$s.csv, layout: rows}
                """.formatted(id);
    }

    /** What the maker says of the lot, and how it is read. */
    public static final String CLAIMS = """
            product: Skerry Lot
            maker: Brackwater Instruments
            about: Earplugs of one production lot on an ear simulator (invented)
            decision: {confidence: 95 %}
            assumed: {bands: 125 Hz to 8 kHz, level: 90 to 100 dB SPL, fit: all, firmware: all}
            editions:
              - {id: datasheet, source: Data sheet, dated: 2026-05-04}
            claims:
              - id: every-unit
                edition: datasheet
                quote: "Every flood plug takes 18 dB off."
                stated: {quantity: attenuation, setting: flood, limit: 18 dB}
                assumed: {tolerance: 4 dB, statistic: mean, units: each}
              - id: every-band
                edition: datasheet
                quote: "No plug is weaker than 8 dB in ebb anywhere."
                stated: {quantity: attenuation, setting: ebb, limit: at least 8 dB}
                assumed: {statistic: every band, units: each}
              - id: usual
                edition: datasheet
                quote: "Storm takes 23 dB off."
                stated: {quantity: attenuation, setting: storm, limit: 23 dB}
                assumed: {tolerance: 2 dB, statistic: mean, units: mean}
              - id: most
                edition: datasheet
                quote: "Nearly all plugs leave you 6 dB in calm."
                stated: {quantity: attenuation, setting: calm, limit: at least 6 dB}
                assumed: {statistic: mean, units: share of 95 %}
              - id: step
                edition: datasheet
                quote: "Flood holds back 5 dB more than ebb."
                stated: {quantity: attenuation, between: {setting: [flood, ebb]}, limit: 5 dB}
                assumed: {tolerance: 2 dB, statistic: mean, units: each}
            """;
}
