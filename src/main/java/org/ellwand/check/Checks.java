package org.ellwand.check;

import java.util.List;

/** Every check of the data, in the order of lists. {@link BackgroundFloor} comes before them: it changes levels. */
final class Checks {
    static final List<DataCheck> ALL = List.of(
            new SlitLeak(),
            new TubeExcess(),
            new TubeAtBackground(),
            new TubeLinearity(),
            new ReturnCheck(),
            new StandingWave(),
            new OpenEarResonance(),
            new FewInsertions(),
            new OddInsertion(),
            new EarSwap(),
            new SettingOrder(),
            new FieldDrift(),
            new PinkShape(),
            new RoomReflection(),
            new CombRipple(),
            new MusicRepeat(),
            new ShortAverage(),
            new Overload(),
            new TraceStart(),
            new TraceEnd(),
            new TraceDirection(),
            new TraceSampling(),
            new TraceWeighting(),
            new TraceOverload(),
            new HarmonicFloor(),
            new RoomNoise(),
            new OwnNoise(),
            new FeedbackTone(),
            new StatedLevel(),
            new SofterThanStated(),
            new WeightedBands(),
            new BandWidths(),
            new DecimalShift(),
            new FigureSlip(),
            new Copies(),
            new SignReversed(),
            new ReferenceMixUp(),
            new CalibrationCheck(),
            new RecordingCheck());

    private Checks() {}
}
