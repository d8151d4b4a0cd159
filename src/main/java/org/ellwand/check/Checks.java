package org.ellwand.check;

import java.util.List;

/** Every check of the data, in the order of lists. {@link BackgroundFloor} comes before them: it changes levels. */
final class Checks {
    static final List<DataCheck> ALL = List.of(
            new SlitLeak(),
            new TubeExcess(),
            new TubeLinearity(),
            new ReturnCheck(),
            new StandingWave(),
            new OpenEarResonance(),
            new FewInsertions(),
            new OddInsertion(),
            new FieldDrift(),
            new MusicRepeat(),
            new ShortAverage(),
            new Overload(),
            new FeedbackTone(),
            new StatedLevel(),
            new DecimalShift(),
            new Copies(),
            new SignReversed(),
            new CalibrationCheck(),
            new RecordingCheck());

    private Checks() {}
}
