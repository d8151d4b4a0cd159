package org.ellwand.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.ellwand.input.InputException;
import org.ellwand.sound.RecordingNote;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds {@code measurements/README.md} to what the reader does. */
class MeasurementsGuideTest {
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```(?:yaml|csv)\n(.*?)^```$");

    @TempDir
    Path path;

    private static String guide() throws IOException {
        return Files.readString(Path.of("measurements/README.md"));
    }

    private static List<String> blocks() throws IOException {
        return BLOCK.matcher(guide())
                .results()
                .map(MatchResult::group)
                .map(MeasurementsGuideTest::inside)
                .toList();
    }

    private static String inside(String block) {
        return block.substring(block.indexOf('\n') + 1, block.length() - 3);
    }

    @Test
    void theFirstSessionIsRead() throws IOException, InputException {
        Session session = new Folder(path)
                .with("measurements/harbour-01.yaml", blocks().get(0))
                .with("measurements/harbour-01.csv", blocks().get(1))
                .only();
        assertThat(session.readings()).hasSize(3);
        assertThat(session.readings()).filteredOn(Reading::isOpenEar).hasSize(1);
    }

    @Test
    void theFullSessionIsRead() throws IOException, InputException {
        Session session = new Folder(path)
                .with("measurements/yard-crew-09.yaml", blocks().get(2))
                .with(
                        "measurements/yard-crew-09.csv",
                        "setting,stimulus,insertion,frequency,level\nebb,pink-65,1,1000,60\n")
                .with("measurements/analyser.csv", "a\nb\nHz;open 65;flood 65 (1);remarks\n1000;65,2;45,2;\n")
                .with("measurements/subjects.csv", "ear,frequency,attenuation\ncrew-10,1000,20\ncrew-11,1000,21\n")
                .with("measurements/harmonics.csv", "order,level\n1,90\n2,40\n")
                .with("measurements/step-up.csv", "time (s),level (dB SPL)\n0,55\n1.2,90\n2,88\n")
                .with("measurements/reel-flood.csv", "time (s),level (dB SPL)\n0,71\n0.125,72\n")
                .with("measurements/reel-open.csv", "time (s),level (dB SPL)\n0,95\n0.125,96\n")
                .only();
        assertThat(session.readings()).hasSize(5);
        assertThat(session.readings().get(0).get("firmware")).contains("1.10");
        assertThat(session.readings().get(0).get("direction")).contains("ahead");
        assertThat(session.harmonics()).hasSize(1);
        assertThat(session.traces())
                .extracting(trace -> trace.step().isPresent())
                .containsExactly(true, false, false);
        assertThat(session.figures()).hasSize(1);
    }

    @Test
    void theSessionWithRecordingsIsRead() throws IOException, InputException {
        double[] pink = Wavs.marked(Wavs.noise(12));
        Session session = new Folder(path)
                .with("measurements/yard-crew-10.yaml", blocks().get(3))
                .with("measurements/cal.wav", Wavs.bytes(Wavs.tone(1000, 0.1, 3)))
                .with("measurements/open.wav", Wavs.bytes(new double[pink.length], pink))
                .with("measurements/flood.wav", Wavs.bytes(new double[pink.length], pink))
                .with("measurements/pink.wav", Wavs.bytes(pink))
                .with("measurements/step.wav", Wavs.bytes(Wavs.tone(1000, 0.1, 3)))
                .with("measurements/tone.wav", Wavs.bytes(Wavs.tone(500, 0.1, 3)))
                .only();
        assertThat(session.readings()).hasSize(2);
        assertThat(session.traces()).hasSize(1);
        assertThat(session.harmonics()).hasSize(1);
        assertThat(session.chain().recorded())
                .extracting(note -> note.note().kind())
                .containsOnly(RecordingNote.Kind.SHORT);
        assertThat(guide()).contains("gives: trace", "gives: harmonics");
        assertThat(CalibratorReader.KEYS).allSatisfy(key -> assertThat(guide()).contains(key));
    }

    @Test
    void namesEveryKeyAndEveryCondition() throws IOException {
        String guide = guide();
        assertThat(SessionDraft.KEYS).allSatisfy(key -> assertThat(guide).contains(key + ":"));
        assertThat(ConditionNames.BUILT_IN).allSatisfy(name -> assertThat(guide).contains("`" + name + "`"));
        assertThat(DataEntry.LAYOUTS.keySet())
                .allSatisfy(word -> assertThat(guide).contains("| `" + word + "` |"));
    }

    @Test
    void printsTheTypicalProbeTubeAsItIs() throws IOException {
        String guide = guide();
        for (Cause cause : TypicalProbeTube.causes()) {
            StringBuilder row = new StringBuilder("| " + cause.name() + " |");
            cause.sizes().forEach(size -> row.append(" ").append(size.size()).append(" |"));
            row.append(" ").append(cause.sharedBy().name().toLowerCase(java.util.Locale.ROOT));
            row.append(cause.independentAcrossBands() ? ", independent |" : " |");
            assertThat(guide).contains(row);
        }
    }
}
