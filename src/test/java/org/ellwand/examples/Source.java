package org.ellwand.examples;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.acoustics.Band;
import org.ellwand.demo.Bands;

/**
 * A test sound: band levels that add up to its overall level over the bands of a rig. Shapes: common practice, no source.
 *
 * @param id name in the session file
 * @param levelDb overall level, dB SPL
 * @param shapeDb band level as a function of frequency in Hz, up to a constant
 */
record Source(String id, double levelDb, DoubleUnaryOperator shapeDb) {
    static final Source HUSH = new Source("hush", Double.NEGATIVE_INFINITY, f -> 0);

    static Source pink(int levelDb) {
        return new Source("pink-" + levelDb, levelDb, f -> 0);
    }

    /** Talk: falls by 6 dB an octave above 500 Hz. */
    static Source speech(String id, double levelDb) {
        return new Source(id, levelDb, f -> -6 * Math.max(0, Bands.octaves(f, 500)));
    }

    /** A tone in one band after the other, each of the full level. */
    static Source tones(String id, double levelDb) {
        return new Source(id, levelDb, f -> Double.NaN);
    }

    double bandDb(Band band, List<Band> all) {
        if (Double.isNaN(shapeDb.applyAsDouble(1000))) {
            return levelDb;
        }
        double sumDb = Bands.energySumDb(all.stream()
                .mapToDouble(b -> shapeDb.applyAsDouble(b.exactHz()))
                .toArray());
        return levelDb + shapeDb.applyAsDouble(band.exactHz()) - sumDb;
    }
}
