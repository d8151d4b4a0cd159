package org.ellwand.acoustics;

import java.util.List;
import java.util.Optional;

/** Finds the band that somebody's frequency means. */
public final class Bands {
    /** How far a written frequency may lie from a band's nominal or exact one, as a share. */
    public static final double TOLERANCE = 0.02;

    /** Lowest frequency that is taken for a band, in Hz: where the weightings A and C begin. */
    public static final double LOWEST_HZ = 9.8;

    /** Highest frequency that is taken for a band, in Hz. */
    public static final double HIGHEST_HZ = 102_000;

    private Bands() {}

    /**
     * The band whose nominal or exact mid-band frequency lies within 2 % of a frequency in Hz. Half the distance
     * between two twelfth-octave bands is 2.9 %, so there is at most one.
     *
     * @param resolution the set to choose from
     * @param frequencyHz as somebody wrote it, in Hz
     * @return empty where no band is that near, or the frequency lies outside {@link #LOWEST_HZ} to {@link #HIGHEST_HZ}
     */
    public static Optional<Band> read(Resolution resolution, double frequencyHz) {
        if (!(frequencyHz >= LOWEST_HZ && frequencyHz <= HIGHEST_HZ)) {
            return Optional.empty();
        }
        return nearestTwo(resolution, frequencyHz).stream()
                .filter(band -> isWithin(frequencyHz, band.nominalHz()) || isWithin(frequencyHz, band.exactHz()))
                .findFirst();
    }

    private static boolean isWithin(double hz, double bandHz) {
        // A hair more than the tolerance, so that 1020 Hz is within 2 % of 1000 Hz in binary numbers too.
        return Math.abs(hz - bandHz) <= bandHz * (TOLERANCE + 1e-12);
    }

    /**
     * {@return the two bands around a positive frequency in Hz, for a message; the nearer one first}
     *
     * @param resolution the set to choose from
     * @param frequencyHz above 0, in Hz
     */
    public static List<Band> nearestTwo(Resolution resolution, double frequencyHz) {
        double hz = Math.min(Math.max(frequencyHz, LOWEST_HZ), HIGHEST_HZ);
        Band nearest = Band.nearest(resolution, hz);
        int step = hz < nearest.exactHz() ? -1 : 1;
        return List.of(nearest, new Band(resolution, nearest.index() + step));
    }
}
