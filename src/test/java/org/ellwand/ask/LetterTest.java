package org.ellwand.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.claim.RuleKey;
import org.ellwand.quantity.Quantities;
import org.ellwand.report.TemplateWriter;
import org.ellwand.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The letter of an invented product. */
class LetterTest {
    private static final String CLAIMS = """
            product: Skerry
            maker: Brackwater Instruments
            editions:
              - {id: box, source: The box, dated: 2025-02}
              - {id: letter, source: A private letter, dated: 2026-02, may be quoted: no}
            claims:
              - id: flood
                edition: box
                topic: reduction in flood
                quote: "Flood takes about 18 dB off."
                stated: {quantity: attenuation, setting: flood, limit: 18 dB}
                assumed: {tolerance: 3 dB, level: 94 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean}
                asked: 2026-07-01
              - id: flood-letter
                edition: letter
                topic: reduction in flood
                quote: "Between us, flood is nearer 12 dB."
                paraphrase: The maker names a smaller figure.
                stated: {quantity: attenuation, setting: flood, limit: at least 12 dB}
                assumed: {level: 94 dB SPL, bands: 250 Hz to 4 kHz, statistic: mean}
              - id: ebb
                edition: box
                quote: "Ebb: 15 dB."
                stated: {quantity: attenuation, setting: ebb, limit: 15 dB, statistic: mean}
                assumed: {sense: at least, level: 94 dB SPL, bands: 125 Hz to 8 kHz}
              - id: answered
                edition: box
                quote: "At 105 dB it still takes 22 dB off."
                stated: {quantity: attenuation, limit: at least 22 dB, level: 105 dB SPL}
                assumed: {statistic: mean, bands: all}
                reply: {dated: 2026-08-12, text: We never measured there.}
              - id: clear
                edition: box
                quote: "Mass: 2.0 to 2.4 g."
                stated: {quantity: figure, of: mass, limit: 2.0 to 2.4 g}
              - id: bang
                edition: box
                quote: "Stops a bang."
                untested because: needs an impulse source
            """;

    @TempDir
    Path temp;

    private Product product() throws Exception {
        Files.createDirectories(temp.resolve("claims"));
        Files.writeString(temp.resolve("claims/skerry.yaml"), CLAIMS);
        return new ClaimsReader(Quantities.forms(), Set.of()).readAll(temp).get(0);
    }

    private String letter(LetterOptions options, Map<String, Map<String, Object>> results) throws Exception {
        Map<String, Object> model = Letter.model(
                product(), options, results, List.of(Map.of("key", "not a rating", "ears", 1, "insertions", 1)));
        byte[] text = TemplateWriter.with(Optional.empty()).write("letter.md.ftl", model);
        return new String(text, StandardCharsets.UTF_8);
    }

    private String plain() throws Exception {
        return letter(LetterOptions.plain(), Map.of());
    }

    @Test
    void whatSeveralSentencesLeaveOpenIsAskedOnceWithWhatWasTaken() throws Exception {
        assertThat(plain())
                .contains("**A.** Over which frequencies does the figure hold? Meanwhile: 125 Hz to 8 kHz (sentences 1"
                        + " and 3); 250 Hz to 4 kHz (sentence 2).")
                .contains("**B.** At which level of the sound outside? Meanwhile: 94 dB SPL (sentences 1, 2 and 3).");
    }

    @Test
    void aSentenceIsAskedForWhatIsItsOwnAndSaysHowItWasRead() throws Exception {
        assertThat(plain()).contains("""
                **1.** “Flood takes about 18 dB off.” (The box, 2025-02)

                - We asked about this on 2026-07-01 and have had no answer so far.
                - You write “about”: within how many dB (or per cent)? Meanwhile: 3 dB.
                - Is the figure a mean over the frequency bands, the weakest band, the best band, or an overall level?\
                 Meanwhile: the mean of the bands in dB.
                - Also: questions A and B.
                - We read it as: mean attenuation, flood, 125 Hz to 8 kHz, 93 to 95 dB SPL: 15 to 21 dB.
                """);
    }

    @Test
    void aPrivateLetterIsNotQuoted() throws Exception {
        assertThat(plain())
                .contains("**2.** The maker names a smaller figure. (in our words; A private letter, 2026-02)")
                .doesNotContain("Between us");
    }

    @Test
    void whatIsAnsweredOrClearIsNotAskedAgain() throws Exception {
        String letter = plain();
        assertThat(letter.substring(letter.indexOf("## Answered"))).startsWith("""
                ## Answered already, with thanks

                - “At 105 dB it still takes 22 dB off.” (The box, 2025-02): “We never measured there.” (2026-08-12)

                ## Clear as they stand

                - “Mass: 2.0 to 2.4 g.” (The box, 2025-02)
                """);
        assertThat(letter.substring(0, letter.indexOf("## Answered"))).doesNotContain("105 dB", "2.4 g");
    }

    @Test
    void sentencesThatDifferAndSentencesThatCannotBeTestedAreAskedAbout() throws Exception {
        assertThat(plain())
                .contains(
                        "- Sentences 1 and 2 speak of the same thing (reduction in flood). Which of them holds today?")
                .contains("- On which measurement does the sentence rest, and by which method was it made? We have no"
                        + " means to test it (needs an impulse source).");
    }

    @Test
    void datesAndSignatureStandWhereTheyAreGiven() throws Exception {
        assertThat(plain()).doesNotContain("answer by 2").endsWith("Yours faithfully,\n\n(name and address)\n");
        assertThat(letter(
                        new LetterOptions(
                                Optional.of("2026-09-01"),
                                Optional.of("2026-10-01"),
                                Optional.of("A. N."),
                                Sentences.english()),
                        Map.of()))
                .startsWith("To Brackwater Instruments\n\n2026-09-01\n\n# Questions about Skerry\n")
                .contains("We should be grateful for your answer by 2026-10-01.")
                .endsWith("Yours faithfully,\n\nA. N.\n");
    }

    @Test
    void resultsComeOnlyWhereTheyAreGivenAndWithTheirCautions() throws Exception {
        Map<String, Object> found =
                Map.of("verdict", "pass", "measured", Map.of("value", ""), "sample", "", "reason", "");
        assertThat(plain()).doesNotContain("What we found", "This is not a rating");
        assertThat(letter(LetterOptions.plain(), Map.of("flood", found)))
                .contains("- What we found: **pass**.")
                .contains("- This is not a rating. A rating needs the standard procedure");
    }

    @Test
    void everyKeyOfARuleAndEveryVagueWordHasItsQuestion() throws Exception {
        String questions = Files.readString(Path.of("templates/letter-questions.ftl"));
        String ofKeys = questions.substring(0, questions.indexOf("wordQuestions"));
        for (RuleKey key : RuleKey.values()) {
            assertThat(ofKeys).contains("\n\"" + key.text() + "\": \"");
        }
        TreeSet<String> words = new TreeSet<>();
        String ofWords = questions.substring(questions.indexOf("wordQuestions"), questions.indexOf("meanings"));
        Pattern.compile("(?m)^\"([a-z ]+)\": ").matcher(ofWords).results().forEach(row -> words.add(row.group(1)));
        assertThat(List.of(VagueWord.values()).stream().map(VagueWord::id)).containsExactlyInAnyOrderElementsOf(words);
    }

    @Test
    void bothFormsSayTheSame() throws Exception {
        Map<String, Object> model = Letter.model(product(), LetterOptions.plain(), Map.of(), List.of());
        String html = new String(
                TemplateWriter.with(Optional.empty()).write("letter.html.ftl", model), StandardCharsets.UTF_8);
        assertThat(words(html.substring(html.indexOf("<body>")).replaceAll("<[^>]+>", " ")))
                .isEqualTo(words(plain().replace("**", "").replaceAll("(?m)^(#+|-) ", "")));
    }

    /** In the HTML a question's letter stands without a full stop. */
    private static String words(String text) {
        return text.replaceAll("(?m)^([A-H])\\. ", "$1 ")
                .replaceAll("\\s+", " ")
                .replaceAll(" ([.:,;])", "$1")
                .strip();
    }
}
