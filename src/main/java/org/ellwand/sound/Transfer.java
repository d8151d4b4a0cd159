package org.ellwand.sound;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;

/**
 * What becomes of a known sound: delay, and by band the gain and the coherence. Coherence is the share of a band's energy
 * that follows the sound, Σ |Sxy|² / Sxx over Σ Syy; the rest is noise or distortion. The gain is that of the part which follows.
 * Of {@code n} pieces, a sound that does not follow shows a coherence of about 1/n by chance. Sound and recording on two clocks drift apart;
 * where that costs coherence, the drift is estimated and taken off.
 *
 * @param delayS by which the response lags behind, to the sample; where there is a drift, when the part begins
 * @param drift by which the delay grows, in s a second; 0 where nothing is taken off
 * @param bands lowest first
 * @param gainDb one per band, as recorded
 * @param coherence one per band, 0 to 1
 */
public record Transfer(double delayS, double drift, List<Band> bands, List<Double> gainDb, List<Double> coherence) {
    /** Below this a band holds too much that does not follow: it lifts its level by 1 dB or more. Common practice, no source. */
    public static final double LEAST_COHERENCE = 0.8;

    private static final int LEAST_PIECES = 8;

    /** A quarter of a second each: about a second, in which clocks drift apart by less than a turn of the highest frequency. */
    private static final int PIECES_A_STRETCH = 4;

    /** What follows so well needs no search for a drift. */
    private static final double WELL = 0.98;

    /** A drift is believed that raises the mean coherence by more; one of noise raises it by less. */
    private static final double MENDED = 0.02;

    private static final double LOWEST_HZ = 99;
    private static final double HIGHEST_HZ = 10_100;
    /** From this delay on, in s, the pieces are shifted before they are compared. */
    private static final double SHIFTED_S = 0.002;

    /**
     * Compares two parts that begin at the same moment of the sound.
     *
     * @param reference the sound as it was
     * @param response the same stretch of it, behind what is measured
     * @return delay, gain and coherence by third octave from 100 Hz to 10 kHz
     * @throws InputException at the response, where they have different rates or are too short
     * @throws IOException where a file cannot be read
     */
    public static Transfer of(RecordedPart reference, RecordedPart response) throws IOException, InputException {
        if (reference.file().rateHz() != response.file().rateHz()) {
            throw wrong(
                    response,
                    "has " + response.file().rateHz() + " samples per second, and "
                            + reference.file().name() + " has "
                            + reference.file().rateHz());
        }
        CrossSpectrum cross = CrossSpectrum.of(reference, response, 0, PIECES_A_STRETCH);
        Transfer plain = of(reference, response, cross, 0);
        if (plain.meanCoherence() >= WELL) {
            return plain;
        }
        double coarse = cross.drift();
        CrossSpectrum halves = CrossSpectrum.of(reference, response, coarse, cross.pieces() / 2);
        double drift = coarse + halves.drift();
        Transfer aligned =
                of(reference, response, CrossSpectrum.of(reference, response, drift, PIECES_A_STRETCH), drift);
        return aligned.meanCoherence() > plain.meanCoherence() + MENDED ? aligned : plain;
    }

    private static Transfer of(RecordedPart reference, RecordedPart response, CrossSpectrum asRead, double drift)
            throws IOException, InputException {
        CrossSpectrum cross = asRead;
        double delayS = cross.pieces() == 0 ? 0 : cross.delayS();
        Optional<RecordedPart> shifted = shifted(response, delayS);
        if (Math.abs(delayS) > SHIFTED_S && shifted.isPresent()) {
            cross = CrossSpectrum.of(reference, shifted.get(), drift, PIECES_A_STRETCH);
        }
        if (cross.pieces() < LEAST_PIECES) {
            throw wrong(
                    response,
                    "is too short to be compared with " + reference.file().name() + ": 4 s are needed");
        }
        return of(cross, delayS, drift);
    }

    private double meanCoherence() {
        return coherence.stream().mapToDouble(c -> c).average().orElse(0);
    }

    private static InputException wrong(RecordedPart part, String text) {
        return new InputException(Place.ofFile(part.file().name()), text);
    }

    /** The part that begins later by the delay; empty where the file does not hold it. */
    private static Optional<RecordedPart> shifted(RecordedPart part, double delayS) {
        long first = part.firstFrame() + Math.round(delayS * part.file().rateHz());
        long frames = Math.min(part.frames(), part.file().frames() - first);
        return first < 0 || frames <= 0
                ? Optional.empty()
                : Optional.of(new RecordedPart(part.file(), part.channel(), first, frames));
    }

    private static Transfer of(CrossSpectrum cross, double delayS, double drift) {
        List<Band> bands = new ArrayList<>();
        List<Double> gains = new ArrayList<>();
        List<Double> coherence = new ArrayList<>();
        Band band = Band.nearest(Resolution.THIRD_OCTAVE, LOWEST_HZ);
        for (; band.exactHz() < HIGHEST_HZ; band = new Band(band.resolution(), band.index() + 1)) {
            double[] powers = cross.powers(band.lowerEdgeHz(), band.upperEdgeHz());
            if (powers[0] > 0 && powers[1] > 0) {
                bands.add(band);
                gains.add(10 * Math.log10(powers[2] / powers[0]));
                coherence.add(powers[2] / powers[1]);
            }
        }
        return new Transfer(delayS, drift, List.copyOf(bands), List.copyOf(gains), List.copyOf(coherence));
    }

    /** {@return the band with the least coherence, as a note; empty where every band follows} */
    public Optional<RecordingNote> note() {
        int worst = -1;
        int low = 0;
        for (int i = 0; i < bands.size(); i++) {
            if (coherence.get(i) < LEAST_COHERENCE) {
                low++;
                worst = worst < 0 || coherence.get(i) < coherence.get(worst) ? i : worst;
            }
        }
        if (worst < 0) {
            return Optional.empty();
        }
        return Optional.of(new RecordingNote(
                RecordingNote.Kind.INCOHERENT,
                RecordingNote.Kind.INCOHERENT
                        .remark()
                        .with("low", low)
                        .with("bands", bands.size())
                        .with("threshold", LEAST_COHERENCE)
                        .with("hz", bands.get(worst).nominalHz())
                        .with("coherence", coherence.get(worst))
                        .with("excess", -10 * Math.log10(Math.max(coherence.get(worst), 1e-6)))));
    }
}
