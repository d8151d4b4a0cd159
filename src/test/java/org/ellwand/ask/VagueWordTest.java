package org.ellwand.ask;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which words bring a standard question. The sentences are invented. */
class VagueWordTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "none",
            value = {
                "Sounds natural in the yard. | natural",
                "Up to 25 dB of calm. | up to",
                "Typical battery life on average: 20 h. | typical",
                "Takes about 22 dB off. | about",
                "The response is flat. | flat",
                "Flood is even. | flat",
                "Clamps down instantly. | instant",
                "Reduces noise by half. | half",
                "Half as loud. | half",
                "Keeps you safe. | safe",
                "Certified in a laboratory. | certified",
                "The same as version 1. | same",
                "A flat response, up to 30 dB. | flat, up to",
                "Even the flange tip takes 10 dB off. | none",
                "More than half of all tones drop by 19 dB. | none",
                "A fastener for your belt. | none",
            })
    void standardQuestionsComeWithTheirWords(String sentence, String words) {
        String found = String.join(
                ", ", VagueWord.in(sentence).stream().map(f -> f.word().id()).toList());
        assertThat(found).isEqualTo(words == null ? "" : words);
    }
}
