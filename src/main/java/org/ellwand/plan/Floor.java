package org.ellwand.plan;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;

/**
 * How loud a test sound must be for an attenuation to be seen above the background. A band counts as it is where it lies
 * 15 dB or more above the background with the product in place, so the open ear must lie that much and the attenuation
 * above it.
 */
final class Floor {
    private static final double CLEAR_DB = 15;

    /** Room, probe and microphone in a third octave, dB (common practice, no source). */
    static final double TYPICAL_DB = 25;

    /** The 19 third octaves from 125 Hz to 8 kHz together, above one of them. */
    private static final double OF_BANDS_DB = 10 * Math.log10(19);

    private Floor() {}

    /** Level of pink noise, dB SPL, whose bands stand clear of a typical floor behind an attenuation. */
    static double typicalDb(double attenuationDb) {
        return attenuationDb + TYPICAL_DB + CLEAR_DB + OF_BANDS_DB;
    }

    /**
     * The level of a sound that was read with the open ear, that one or another of its kind, shifted as far as the least favourable band
     * needs; empty where the open ear was not read in quiet and under any.
     */
    static OptionalDouble neededDb(Session session, Stimulus sound, double attenuationDb) {
        List<CurveReading> quiet = openEar(
                session,
                reading -> session.stimulusOf(reading.conditions())
                        .filter(Stimulus::isQuiet)
                        .isPresent());
        List<CurveReading> loud = openEar(session, reading -> isOfKind(session, reading, sound));
        if (quiet.isEmpty() || loud.isEmpty()) {
            return OptionalDouble.empty();
        }
        CurveReading like = loud.stream()
                .filter(reading ->
                        reading.get("stimulus").filter(sound.id()::equals).isPresent())
                .findFirst()
                .orElse(loud.get(0));
        Spectrum floor = quiet.get(0).spectrum();
        Spectrum open = like.spectrum();
        Stimulus read = session.stimulusOf(like.conditions()).orElseThrow();
        return floor.bands().stream()
                .filter(band -> open.at(band).isPresent())
                .mapToDouble(band -> levelDb(floor, band) - levelDb(open, band))
                .max()
                .stream()
                .map(least -> Loudness.fieldDb(read) + least + CLEAR_DB + attenuationDb)
                .findFirst();
    }

    private static List<CurveReading> openEar(Session session, Predicate<CurveReading> wanted) {
        return session.readings().stream()
                .filter(reading -> reading.isOpenEar() && wanted.test(reading))
                .toList();
    }

    private static boolean isOfKind(Session session, CurveReading reading, Stimulus sound) {
        return session.stimulusOf(reading.conditions())
                .filter(read -> read.kind().equals(sound.kind()))
                .isPresent();
    }

    private static double levelDb(Spectrum spectrum, Band band) {
        return spectrum.at(band).orElseThrow().levelDb();
    }
}
