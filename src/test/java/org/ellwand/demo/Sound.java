package org.ellwand.demo;

import java.util.function.DoubleUnaryOperator;

/**
 * A test sound in the field: band levels that add up to its overall level. Pink noise has one level in all third octaves
 * but for the loudspeaker's ripple; music falls towards both ends; quiet has no sound at all. Shapes: common practice,
 * no source.
 *
 * @param levelDb overall level over the bands of the demo, dB SPL
 */
record Sound(String id, double levelDb, DoubleUnaryOperator shapeDb) {
    static Sound pinkNoise(int levelDb) {
        return new Sound("pink-" + levelDb, levelDb, f -> 0.6 * Math.sin(5 * Bands.octaves(f, 1000)));
    }

    static Sound music(int levelDb) {
        return new Sound(
                "reel-" + levelDb,
                levelDb,
                f -> -1.5 * Math.abs(Bands.octaves(f, 400)) + Math.sin(Bands.octaves(f, 70) * 4));
    }

    static Sound quiet() {
        return new Sound("hush", Double.NEGATIVE_INFINITY, f -> 0);
    }

    double bandDb(double frequencyHz) {
        double sumDb = Bands.energySumDb(Bands.ALL.stream()
                .mapToDouble(band -> shapeDb.applyAsDouble(band.exactHz()))
                .toArray());
        return levelDb + shapeDb.applyAsDouble(frequencyHz) - sumDb;
    }
}
