package org.ellwand.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.ellwand.amount.Unit;
import org.ellwand.input.InputException;
import org.ellwand.sound.Programme;
import org.ellwand.sound.Stimuli;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a sound to play while measuring, with a mark by which recordings of it are put on one clock. */
@Command(
        name = "stimulus",
        description = "Writes a sound to play while measuring: pink noise, a tone that steps and steps back, or tones.",
        footer = {
            "",
            "Example: pink noise at five levels, for an onset:",
            "  ellwand stimulus pink --level \"-45 dB\" --level \"-40 dB\" --level \"-35 dB\" \\",
            "    --level \"-30 dB\" --level \"-25 dB\" --out series.wav",
            "It prints the parts with their times after the mark; a session takes them as 'from' and 'to' with"
                    + " 'times from: sync mark'. A step goes up and down, or down and up: two parts, for an entry each,"
                    + " with 'step' as printed; put the levels in the field in place of FILL. Sounds at high levels harm hearing: begin soft, keep to what a safe exposure allows."
        })
final class StimulusCommand implements Callable<Integer> {
    private static final double LEAST_DB = -90;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "pink|step|tones",
            description = "Pink noise, a tone that steps to --level and back, or tones.")
    private String kind = "";

    @Option(names = "--out", required = true, paramLabel = "WAV", description = "A new file, 24 bits, one channel.")
    private Path out = Path.of("");

    @Option(
            names = "--level",
            paramLabel = "DB",
            description = "Root mean square re full scale (default: -20 dB); for pink noise it may be given again.")
    private List<String> levels = List.of("-20 dB");

    @Option(
            names = "--crest",
            paramLabel = "DB",
            defaultValue = "12 dB",
            description = "Peak over root mean square of pink noise, 9 to 14 dB (default: ${DEFAULT-VALUE}).")
    private String crest = "12 dB";

    @Option(
            names = "--tone",
            paramLabel = "HZ",
            description = "Frequency (default: 1 kHz); for tones it may be given again.")
    private List<String> tones = List.of("1 kHz");

    @Option(
            names = "--from-level",
            paramLabel = "DB",
            defaultValue = "-45 dB",
            description = "Level of a step before and after (default: ${DEFAULT-VALUE}).")
    private String fromLevel = "-45 dB";

    @Option(
            names = "--time",
            paramLabel = "TIME",
            defaultValue = "10 s",
            description = "How long each part lasts at least (default: ${DEFAULT-VALUE}).")
    private String time = "10 s";

    @Option(
            names = "--rate",
            paramLabel = "HZ",
            defaultValue = "48000",
            description =
                    "Samples per second: 44100, 48000, 88200, 96000, 176400 or 192000 (default: ${DEFAULT-VALUE}).")
    private int rateHz = 48_000;

    @Override
    public Integer call() throws InputException, IOException {
        if (!List.of(44_100, 48_000, 88_200, 96_000, 176_400, 192_000).contains(rateHz)) {
            throw wrong("--rate takes 44100, 48000, 88200, 96000, 176400 or 192000, not " + rateHz);
        }
        checkOptions();
        try (NewFile file = new NewFile(out)) {
            Programme programme = programme();
            if (programme.peak() >= 1) {
                throw wrong("the sound would be cut off: its peak is " + text("%.1f", 20 * Math.log10(programme.peak()))
                        + " dB above full scale; take a lower level");
            }
            file.write(programme.wav());
            file.keep();
            say(programme);
        }
        return ExitCode.DONE;
    }

    /** What a kind of sound makes nothing of is refused and not passed over. */
    private void checkOptions() {
        switch (kind) {
            case "pink" -> refuse("--tone", "--from-level");
            case "step" -> {
                refuse("--crest");
                one("--tone", tones);
                one("--level", levels);
            }
            case "tones" -> {
                refuse("--crest", "--from-level");
                one("--level", levels);
            }
            default -> throw wrong("there is no stimulus '" + kind + "'; there are pink, step and tones");
        }
    }

    private void refuse(String... options) {
        for (String option : options) {
            if (spec.commandLine().getParseResult().hasMatchedOption(option)) {
                throw wrong(kind + " takes no " + option);
            }
        }
    }

    private void one(String option, List<String> given) {
        if (given.size() > 1) {
            throw wrong(kind + " takes one " + option + ", not " + given.size());
        }
    }

    private Programme step(double seconds) {
        double before = level("--from-level", fromLevel);
        double then = levelsDb().get(0);
        if (before == then) {
            throw wrong("--level and --from-level are the same: a step goes from one level to another");
        }
        return Stimuli.step(rateHz, tonesHz().get(0), before, then, seconds);
    }

    private Programme programme() {
        double seconds = within("--time", AmountOption.in(spec, "--time", time, Unit.SECOND, "10 s"), 0.5, 120, "s");
        return switch (kind) {
            case "pink" -> Stimuli.pink(rateHz, levelsDb(), crestDb(), seconds, "pink");
            case "step" -> step(seconds);
            case "tones" -> Stimuli.tones(rateHz, tonesHz(), levelsDb().get(0), seconds);
            default -> throw wrong("there is no stimulus '" + kind + "'; there are pink, step and tones");
        };
    }

    private double crestDb() {
        return within("--crest", AmountOption.in(spec, "--crest", crest, Unit.DB, "12 dB"), 9, 14, "dB");
    }

    private List<Double> levelsDb() {
        List<Double> all = new ArrayList<>();
        levels.forEach(text -> all.add(level("--level", text)));
        return all;
    }

    private double level(String option, String text) {
        return within(option, AmountOption.in(spec, option, text, Unit.DB, "-20 dB"), LEAST_DB, 0, "dB");
    }

    private List<Double> tonesHz() {
        List<Double> all = new ArrayList<>();
        tones.forEach(text ->
                all.add(within("--tone", AmountOption.in(spec, "--tone", text, Unit.HZ, "1 kHz"), 20, 20_000, "Hz")));
        return all;
    }

    private double within(String option, double value, double least, double most, String unit) {
        if (value >= least && value <= most) {
            return value;
        }
        throw wrong(text("%s takes %.1f to %.1f %s, not %.1f", option, least, most, unit, value));
    }

    private ParameterException wrong(String text) {
        return new ParameterException(spec.commandLine(), text);
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    private void say(Programme programme) {
        PrintWriter err = spec.commandLine().getErr();
        err.println(text("%s written to %s; peak %.1f dB re full scale", kind, out, 20 * Math.log10(programme.peak())));
        err.println("times from: sync mark");
        programme
                .parts()
                .forEach(part -> err.println(text(
                        "  from: %.3f s, to: %.3f s%s   %s",
                        part.fromS(),
                        part.toS(),
                        part.stepS()
                                .map(s -> text(", step: {at: %.3f s, from: FILL dB SPL, to: FILL dB SPL}", s))
                                .orElse(""),
                        part.what())));
        err.flush();
    }
}
