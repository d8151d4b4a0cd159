package org.ellwand.sound;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.sound.RecordingNote.Kind;
import org.ellwand.words.Figures;
import org.ellwand.words.Remark;

/** What is wrong with a recording or its calibration, each with what follows from it. */
public final class RecordingNotes {
    private static final double OFFSET = 0.01;
    /** An offset with a hundredth of the sound's energy. */
    private static final double OFFSET_SHARE = 0.01;

    private static final double FEW_STEPS = 16;
    private static final double SCATTER_DB = 0.5;

    /** As much as a tone that is switched on a fifth of a stretch late (common practice, no source). */
    private static final double LASTS_DB = 1;

    /** A tone twice as strong as the one that is looked for (common practice, no source). */
    private static final double STRONGER_DB = 3;

    private RecordingNotes() {}

    /**
     * {@return what the samples of a recording say is wrong with it}
     *
     * @param faults of the samples
     * @param format in which they are stored
     */
    public static List<RecordingNote> of(SampleFaults faults, SampleFormat format) {
        List<RecordingNote> notes = new ArrayList<>();
        if (faults.clipped() > 0) {
            notes.add(new RecordingNote(
                    Kind.CLIPPED,
                    Kind.CLIPPED
                            .remark()
                            .with("at", 20 * Math.log10(faults.clippedAt()))
                            .with("places", places(faults.clipped()))
                            .with("seconds", faults.clippedS())));
        }
        if (faults.dropped() > 0) {
            notes.add(new RecordingNote(
                    Kind.DROPPED,
                    Kind.DROPPED
                            .remark()
                            .with("places", places(faults.dropped()))
                            .with("seconds", faults.droppedS())
                            .with("longest", 1000 * faults.longestDropS())));
        }
        double offset = faults.offset();
        if (Math.abs(offset) > OFFSET || offset * offset > OFFSET_SHARE * Math.max(faults.meanSquare(), 1e-8)) {
            notes.add(new RecordingNote(Kind.OFFSET, Kind.OFFSET.remark().with("mean", offset)));
        }
        double rms = Math.sqrt(faults.meanSquare());
        if (format.isPcm() && rms < FEW_STEPS * format.step()) {
            notes.add(new RecordingNote(Kind.WEAK, Kind.WEAK.remark().with("steps", rms / format.step())));
        }
        return notes;
    }

    /**
     * {@return what length and sampling rate leave unmeasured or coarse}
     *
     * @param levels as measured
     * @param analysis what was asked for
     * @param rateHz samples per second
     */
    public static List<RecordingNote> of(SoundLevels levels, SoundAnalysis analysis, double rateHz) {
        List<RecordingNote> notes = new ArrayList<>();
        List<Band> missing = levels.bands().stream()
                .filter(band -> !levels.isLongEnough(band))
                .toList();
        if (!missing.isEmpty()) {
            notes.add(new RecordingNote(
                    Kind.TOO_SHORT,
                    Kind.TOO_SHORT
                            .remark()
                            .with("seconds", levels.durationS())
                            .with("highest", hz(missing.get(missing.size() - 1)))
                            .with("threshold", SoundLevels.LEAST_PRODUCT)));
        }
        List<Band> coarse = levels.bands().stream()
                .filter(band -> levels.isLongEnough(band) && levels.scatterDb(band) > SCATTER_DB)
                .toList();
        if (!coarse.isEmpty()) {
            notes.add(new RecordingNote(
                    Kind.SHORT,
                    Kind.SHORT
                            .remark()
                            .with("seconds", levels.durationS())
                            .with("highest", hz(coarse.get(coarse.size() - 1)))
                            .with("lowest", hz(coarse.get(0)))
                            .with("scatter", levels.scatterDb(coarse.get(0)))));
        }
        Band next = firstNotMeasured(levels, analysis);
        if (next.exactHz() <= analysis.highestHz()) {
            notes.add(new RecordingNote(
                    Kind.OUT_OF_REACH,
                    Kind.OUT_OF_REACH.remark().with("rate", rateHz).with("from", hz(next))));
        }
        return notes;
    }

    private static Band firstNotMeasured(SoundLevels levels, SoundAnalysis analysis) {
        if (levels.bands().isEmpty()) {
            return Band.nearest(analysis.resolution(), analysis.lowestHz());
        }
        Band highest = levels.bands().get(levels.bands().size() - 1);
        return new Band(highest.resolution(), highest.index() + 1);
    }

    /**
     * {@return what is wrong with a tone of which harmonics are read} Harmonics are sums over the whole part, under a window that weighs its middle
     * most, at multiples of a frequency that silence and noise mislead.
     *
     * @param harmonics as measured
     * @param fundamentalHz frequency that the tone is said to have, in Hz
     */
    public static List<RecordingNote> of(RecordedHarmonics harmonics, double fundamentalHz) {
        if (harmonics.strongerDb() > STRONGER_DB) {
            return List.of(new RecordingNote(
                    Kind.ANOTHER_TONE,
                    Kind.ANOTHER_TONE
                            .remark()
                            .with("hz", harmonics.strongestHz())
                            .with("expected", fundamentalHz)
                            .with("stronger", harmonics.strongerDb())));
        }
        if (harmonics.spreadDb() > LASTS_DB) {
            return List.of(new RecordingNote(
                    Kind.UNLASTING,
                    Kind.UNLASTING
                            .remark()
                            .with("spread", harmonics.spreadDb())
                            .with("threshold", LASTS_DB)
                            .with("stretches", RecordedHarmonics.STRETCHES)));
        }
        return List.of();
    }

    /**
     * {@return what is wrong with a calibration}
     *
     * @param calibration as measured
     * @param expectedHz frequency that the calibrator is to have
     * @param format in which the samples are stored
     */
    public static List<RecordingNote> of(Calibration calibration, double expectedHz, SampleFormat format) {
        List<RecordingNote> notes = new ArrayList<>(of(calibration.faults(), format));
        if (calibration.jumps() > 0) {
            notes.add(new RecordingNote(Kind.JUMPS, Kind.JUMPS.remark().with("places", places(calibration.jumps()))));
        }
        if (calibration.spreadDb() > Calibration.STEADY_DB) {
            notes.add(new RecordingNote(
                    Kind.UNSTEADY,
                    Kind.UNSTEADY
                            .remark()
                            .with("spread", calibration.spreadDb())
                            .with("seconds", calibration.steadyS())));
        }
        if (Math.abs(calibration.frequencyHz() / expectedHz - 1) > Calibration.FREQUENCY_SHARE) {
            notes.add(new RecordingNote(
                    Kind.WRONG_FREQUENCY,
                    Kind.WRONG_FREQUENCY
                            .remark()
                            .with("hz", calibration.frequencyHz())
                            .with("expected", expectedHz)));
        }
        if (calibration.restDb() > Calibration.CLEAN_DB) {
            notes.add(new RecordingNote(Kind.UNCLEAN, Kind.UNCLEAN.remark().with("below", -calibration.restDb())));
        }
        return notes;
    }

    private static Remark places(int count) {
        return count == 1
                ? Remark.of("recording-one-place")
                : Remark.of("recording-places").with("count", count);
    }

    private static String hz(Band band) {
        return Figures.plain(band.nominalHz()) + " Hz";
    }
}
