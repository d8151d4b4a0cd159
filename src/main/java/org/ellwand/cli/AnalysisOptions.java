package org.ellwand.cli;

import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Unit;
import org.ellwand.sound.SoundAnalysis;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How a recording is measured: width of the bands, weightings of the trace. */
final class AnalysisOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--resolution",
            paramLabel = "WIDTH",
            defaultValue = "third-octave",
            description = "octave, third-octave, sixth-octave or twelfth-octave (default: ${DEFAULT-VALUE}).")
    private String resolution = "third-octave";

    @Option(
            names = "--weighting",
            paramLabel = "A|C|Z",
            defaultValue = "A",
            description = "Frequency weighting of the trace (default: ${DEFAULT-VALUE}).")
    private Weighting weighting = Weighting.A;

    @Option(
            names = "--time-constant",
            paramLabel = "TIME",
            defaultValue = "fast",
            description = "fast (125 ms), slow (1 s) or a time, as '5 ms' (default: ${DEFAULT-VALUE}).")
    private String timeConstant = "fast";

    @Option(
            names = "--every",
            paramLabel = "TIME",
            defaultValue = "10 ms",
            description = "How often the trace has a level (default: ${DEFAULT-VALUE}).")
    private String every = "10 ms";

    /** As it was written. */
    String timeConstant() {
        return timeConstant;
    }

    SoundAnalysis analysis() {
        Resolution width = Resolution.named(resolution)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "--resolution takes octave, third-octave, sixth-octave or twelfth-octave, not '" + resolution
                                + "'"));
        SoundAnalysis plain = SoundAnalysis.of(width);
        double everyS = positive("--every", every, 0.0001, 60);
        double constantS = switch (timeConstant) {
            case "fast" -> SoundAnalysis.FAST_S;
            case "slow" -> SoundAnalysis.SLOW_S;
            default -> positive("--time-constant", timeConstant, 0.0001, 60);
        };
        return new SoundAnalysis(width, plain.lowestHz(), plain.highestHz(), constantS, everyS, weighting);
    }

    private double positive(String option, String text, double least, double most) {
        double seconds = AmountOption.in(spec, option, text, Unit.SECOND, "10 ms");
        if (!(seconds >= least && seconds <= most)) {
            throw new ParameterException(
                    spec.commandLine(), option + " takes a time from 0.1 ms to 60 s, not '" + text + "'");
        }
        return seconds;
    }
}
