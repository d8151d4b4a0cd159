package org.ellwand.check;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;

/**
 * A band that lies below those on either side, as cos(2πfd/c) does where a tip stands a quarter of a wave from the eardrum.
 *
 * @param depthDb below the mean of the neighbouring bands
 */
record Notch(Band band, double depthDb) {
    private static final double LOWEST_HZ = 4000;
    private static final double HIGHEST_HZ = 8000;
    private static final double TWO_BANDS_HZ = 6300;

    /** So far an ear's own curve sags between bands four third octaves apart (as a model of it does), dB. */
    private static final double OWN_DB = 2;

    private static final double SPEED_OF_SOUND = 350;

    /** From 4 to 8 kHz; none where the bands are wider than third octaves. */
    static Optional<Notch> deepest(LevelCurve gain) {
        if (!Curves.isAsFineAs(Resolution.THIRD_OCTAVE, gain)) {
            return Optional.empty();
        }
        return Curves.between(gain, LOWEST_HZ, HIGHEST_HZ).bands().stream()
                .flatMap(band -> depthDb(gain, band).map(db -> new Notch(band, db)).stream())
                .max(Comparator.comparingDouble(Notch::depthDb));
    }

    /** How far from the eardrum a tip reads so. */
    double awayMm() {
        return 1000 * SPEED_OF_SOUND / (4 * band.exactHz());
    }

    /** Of two the lower in frequency, which spoils more levels. */
    Notch lower(Notch other) {
        return other.band().exactHz() < band.exactHz() ? other : this;
    }

    /** How far the gain lies below the mean of those one, or two, third octaves beside it, whichever is more. */
    private static Optional<Double> depthDb(LevelCurve gain, Band band) {
        // Two bands hold a notch that lies between them; below, the ear's own curve is as deep.
        return IntStream.rangeClosed(1, band.nominalHz() < TWO_BANDS_HZ ? 1 : 2)
                .boxed()
                .flatMap(thirds -> depthDb(gain, band, thirds).stream())
                .max(Comparator.naturalOrder());
    }

    private static Optional<Double> depthDb(LevelCurve gain, Band band, int thirds) {
        int step = thirds * band.resolution().bandsPerOctave() / 3;
        int at = gain.place(band);
        int below = gain.place(new Band(band.resolution(), band.index() - step));
        int above = gain.place(new Band(band.resolution(), band.index() + step));
        double own = thirds == 1 ? 0 : OWN_DB;
        double[] db = gain.numbers();
        return at < 0 || below < 0 || above < 0
                ? Optional.empty()
                : Optional.of((db[below] + db[above]) / 2 - db[at] - own);
    }
}
