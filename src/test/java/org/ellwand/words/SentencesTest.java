package org.ellwand.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.acoustics.NoNumber;
import org.ellwand.claim.Statistic;
import org.ellwand.input.InputException;
import org.ellwand.sound.RecordingNote;
import org.junit.jupiter.api.Test;

class SentencesTest {
    private static final Pattern LITERAL = Pattern.compile("\"([a-z]+(?:-[a-z]+)*)\"");

    @Test
    void figuresStandInTheirPlaces() {
        Remark remark = Remark.of("too-few-insertions").with("insertions", 3).with("needed", 5);
        assertThat(remark.text())
                .isEqualTo("too few insertions: were the value to stay, 5 insertions instead of 3 would settle it");
    }

    @Test
    void figuresArePrintedWithTheirUnitsRoundedAndWithATrueMinus() {
        assertThat(Remark.of("on-the-limit").with("u", new Measure(0.526, "dB")).text())
                .endsWith("(u = 0.53 dB)");
        assertThat(Remark.of("on-the-limit").with("u", new Measure(0.00426, "")).text())
                .endsWith("(u = 0.0043)");
        assertThat(Remark.of("beyond-series")
                        .with("value", new Measure(-3, "dB"))
                        .text())
                .contains("ends at \u22123 dB and");
        assertThat(Remark.of("missing-bands").with("hz", List.of(31.5, 125.0)).text())
                .isEqualTo("missing bands: 31.5, 125 Hz");
    }

    @Test
    void aPlaceMayAskForDecimals() {
        Remark drift = Remark.of("calibrator-drift").with("drift", -0.55).with("threshold", 0.5);
        assertThat(drift.text())
                .isEqualTo("the calibrator read \u22120.6 dB otherwise after the session, more than 0.5 dB");
        assertThat(drift.with("drift", 1.0).text()).contains("read 1.0 dB");
        assertThat(drift.with("drift", -0.04).text()).contains("read 0.0 dB");
    }

    @Test
    void aRemarkInARemarkIsWordedToo() {
        Remark why = Remark.of("no-open-ear").with("session", "yard-1");
        assertThat(Remark.of("not-used").with("why", why).text())
                .isEqualTo("not used: no open-ear reading of the same ear and stimulus in session yard-1");
        assertThat(Remark.of("no-usable-reading")
                        .with("why", List.of(why, Remark.of("unlike-resolutions")))
                        .text())
                .contains("yard-1; readings of different resolutions");
    }

    @Test
    void whatLooksLikeAPlaceInANameIsNoPlace() {
        assertThat(Remark.of("not-measured-under")
                        .with("condition", "setting")
                        .with("name", "{condition}$1\\")
                        .text())
                .isEqualTo("nothing was measured under setting '{condition}$1\\'");
    }

    @Test
    void aUsersFileReplacesSingleSentences() throws InputException {
        Sentences german = Sentences.english()
                .with("templates/remarks.txt", "# Deutsch\n\nmissing-bands = es fehlen die Bänder {hz} Hz\n");
        assertThat(german.of(Remark.of("missing-bands").with("hz", List.of(500.0))))
                .isEqualTo("es fehlen die Bänder 500 Hz");
        assertThat(german.of(Remark.of("no-reading"))).isEqualTo("no reading under these conditions");
    }

    @Test
    void whatTheUsersFileGetsWrongIsToldWithItsPlaceAndWhatThereIs() {
        String file = "missing-band = x\n\nmissing-bands = {herz} x\nno-reading = {x}\nno equals sign\n";
        assertThatThrownBy(() -> Sentences.english().with("templates/remarks.txt", file))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.problems())
                                .extracting(Object::toString)
                                .containsExactly(
                                        "templates/remarks.txt:1:1: no remark has the key 'missing-band' (did you mean"
                                                + " 'missing-bands'?)",
                                        "templates/remarks.txt:3:1: 'missing-bands' has no figure 'herz'; there is hz",
                                        "templates/remarks.txt:4:1: 'no-reading' has no figure 'x'; it has none",
                                        "templates/remarks.txt:5:1: a line is 'key = sentence'"));
    }

    /** A remark that the program makes has a sentence, and no sentence is left over. */
    @Test
    void everyRemarkOfTheProgramHasItsSentence() throws IOException {
        Set<String> made = new TreeSet<>();
        for (String source : sources()) {
            if (source.startsWith("package org.ellwand.check;")) {
                LITERAL.matcher(source).results().map(found -> found.group(1)).forEach(made::add);
            }
            Arrays.stream(source.split("Remark", -1))
                    .skip(1)
                    .flatMap(after -> LITERAL.matcher(after.substring(0, Math.min(400, after.length())))
                            .results()
                            .map(found -> found.group(1)))
                    .forEach(made::add);
        }
        Stream.of(NoNumber.values()).map(NoNumber::key).forEach(made::add);
        Stream.of(Statistic.values())
                .map(s -> "rule-" + s.text().replace(' ', '-'))
                .forEach(made::add);
        Stream.of("ear", "unit", "head").forEach(one -> {
            made.addAll(Set.of("one-" + one, "one-" + one + "-undeclared"));
            made.addAll(Set.of("rule-each-" + one, "rule-mean-over-" + one + "s", "rule-share-of-" + one + "s"));
        });
        Stream.of("inside", "below", "above")
                .map("uncertainty-not-stated-"::concat)
                .forEach(made::add);
        Stream.of("at-least", "at-most", "between", "none")
                .map("lot-test-"::concat)
                .forEach(made::add);
        made.addAll(Set.of("near-background", "no-partner-bands", "no-band"));
        Stream.of(RecordingNote.Kind.values())
                .map(kind -> "recording-" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .forEach(made::add);
        Stream.of("sessions", "firmwares").map("left-out-"::concat).forEach(made::add);
        Stream.of("units", "ears", "others").map("no-pairs-of-"::concat).forEach(made::add);
        assertThat(Sentences.english().keys()).isSubsetOf(made);
    }

    @Test
    void everyKeyThatIsWrittenOutHasItsSentence() throws IOException {
        Pattern of = Pattern.compile("Remark\\.of\\(\\s*\"([a-z-]+[a-z])\"\\)");
        Set<String> written = sources().stream()
                .flatMap(source -> of.matcher(source).results().map(found -> found.group(1)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(written).hasSizeGreaterThan(50);
        assertThat(Sentences.english().keys()).containsAll(written);
    }

    private static List<String> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            List<String> sources = new ArrayList<>();
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                sources.add(Files.readString(file));
            }
            return sources;
        }
    }
}
