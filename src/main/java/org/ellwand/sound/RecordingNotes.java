package org.ellwand.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ellwand.acoustics.Band;
import org.ellwand.sound.RecordingNote.Kind;

/** What is wrong with a recording or its calibration, each with what follows from it. */
public final class RecordingNotes {
    private static final double OFFSET = 0.01;
    /** An offset with a hundredth of the sound's energy. */
    private static final double OFFSET_SHARE = 0.01;

    private static final double FEW_STEPS = 16;
    private static final double SCATTER_DB = 0.5;

    private RecordingNotes() {}

    /** Of the samples of a recording. */
    public static List<RecordingNote> of(SampleFaults faults, SampleFormat format) {
        List<RecordingNote> notes = new ArrayList<>();
        if (faults.clipped() > 0) {
            notes.add(note(
                    Kind.CLIPPED,
                    "the sound is cut off at %.1f dB re full scale in %d %s, first at %.3f s: levels there are too low and"
                            + " distortion is not the product's; record again with less gain",
                    20 * Math.log10(faults.clippedAt()),
                    faults.clipped(),
                    faults.clipped() == 1 ? "place" : "places",
                    faults.clippedS()));
        }
        if (faults.dropped() > 0) {
            notes.add(note(
                    Kind.DROPPED,
                    "equal samples amid sound in %d %s, first at %.3f s, for up to %.1f ms: samples were lost, levels are"
                            + " too low by their share and the gaps sound in every band; record again",
                    faults.dropped(),
                    faults.dropped() == 1 ? "place" : "places",
                    faults.droppedS(),
                    1000 * faults.longestDropS()));
        }
        double offset = faults.offset();
        if (Math.abs(offset) > OFFSET || offset * offset > OFFSET_SHARE * Math.max(faults.meanSquare(), 1e-8)) {
            notes.add(note(
                    Kind.OFFSET,
                    "the samples have a mean of %.4f of full scale (DC): it was taken off; it leaves less room above",
                    offset));
        }
        double rms = Math.sqrt(faults.meanSquare());
        if (format.isPcm() && rms < FEW_STEPS * format.step()) {
            notes.add(note(
                    Kind.WEAK,
                    "the sound is only %.1f steps of its format strong: quiet bands are those of the rounding; record again"
                            + " with more gain or more bits",
                    rms / format.step()));
        }
        return notes;
    }

    /** Of the length and the sampling rate. */
    public static List<RecordingNote> of(SoundLevels levels, SoundAnalysis analysis, double rateHz) {
        List<RecordingNote> notes = new ArrayList<>();
        List<Band> missing = levels.bands().stream()
                .filter(band -> !levels.isLongEnough(band))
                .toList();
        if (!missing.isEmpty()) {
            notes.add(note(
                    Kind.TOO_SHORT,
                    "%.3f s are too short for the bands up to %s (bandwidth times time is below %.0f): they stay empty",
                    levels.durationS(),
                    hz(missing.get(missing.size() - 1)),
                    SoundLevels.LEAST_PRODUCT));
        }
        List<Band> coarse = levels.bands().stream()
                .filter(band -> levels.isLongEnough(band) && levels.scatterDb(band) > SCATTER_DB)
                .toList();
        if (!coarse.isEmpty()) {
            notes.add(note(
                    Kind.SHORT,
                    "%.3f s are short for the bands up to %s: under noise the level at %s scatters by %.1f dB (k = 1), which"
                            + " belongs into the session's uncertainty; record longer",
                    levels.durationS(),
                    hz(coarse.get(coarse.size() - 1)),
                    hz(coarse.get(0)),
                    levels.scatterDb(coarse.get(0))));
        }
        Band next = levels.bands().isEmpty()
                ? Band.nearest(analysis.resolution(), analysis.lowestHz())
                : levels.bands().get(levels.bands().size() - 1);
        next = levels.bands().isEmpty() ? next : new Band(next.resolution(), next.index() + 1);
        if (next.exactHz() <= analysis.highestHz()) {
            notes.add(note(
                    Kind.OUT_OF_REACH,
                    "at %.0f samples per second there are no bands from %s on: its upper edge is out of reach",
                    rateHz,
                    hz(next)));
        }
        return notes;
    }

    /**
     * Of a calibration.
     *
     * @param expectedHz frequency that the calibrator is to have
     */
    public static List<RecordingNote> of(Calibration calibration, double expectedHz, SampleFormat format) {
        List<RecordingNote> notes = new ArrayList<>(of(calibration.faults(), format));
        if (calibration.spreadDb() > Calibration.STEADY_DB) {
            notes.add(note(
                    Kind.UNSTEADY,
                    "the tone is not steady, it moves by %.2f dB within %.1f s: every level is as uncertain as that; seat the"
                            + " calibrator and record it again",
                    calibration.spreadDb(),
                    calibration.steadyS()));
        }
        if (Math.abs(calibration.frequencyHz() / expectedHz - 1) > Calibration.FREQUENCY_SHARE) {
            notes.add(note(
                    Kind.WRONG_FREQUENCY,
                    "the tone is at %.1f Hz and not at %.1f Hz: it may not be the calibrator's, and then every level is wrong",
                    calibration.frequencyHz(),
                    expectedHz));
        }
        if (calibration.restDb() > Calibration.CLEAN_DB) {
            notes.add(note(
                    Kind.UNCLEAN,
                    "what else is in the recording lies only %.1f dB below the tone: noise or distortion; its level was"
                            + " measured without that",
                    -calibration.restDb()));
        }
        return notes;
    }

    private static String hz(Band band) {
        double hz = band.nominalHz();
        return (hz == Math.rint(hz) ? Long.toString((long) hz) : Double.toString(hz)) + " Hz";
    }

    private static RecordingNote note(Kind kind, String form, Object... values) {
        return new RecordingNote(kind, String.format(Locale.ROOT, form, values));
    }
}
