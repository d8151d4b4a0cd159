package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** How values stand in the record. */
class JsonFormTest {
    private static String written(JsonNode node) {
        return new String(JsonForm.write(node), StandardCharsets.UTF_8);
    }

    @Test
    void aWholeFrequencyHasNoPoint() {
        assertThat(JsonForm.frequency(125)).hasToString("125");
        assertThat(JsonForm.frequency(31.5)).hasToString("31.5");
        assertThat(JsonForm.frequency(OptionalDouble.of(8000))).hasToString("8000");
        assertThat(JsonForm.frequency(OptionalDouble.empty()).isNull()).isTrue();
    }

    /** 10^15 and more would lose digits on the way through other programs: they stay what they are. */
    @Test
    void whatIsTooLargeForAWholeNumberKeepsItsForm() {
        assertThat(JsonForm.frequency(999_999_999_999_999.0)).hasToString("999999999999999");
        assertThat(JsonForm.frequency(1e15).isFloatingPointNumber()).isTrue();
        assertThat(JsonForm.frequency(-1e15).isFloatingPointNumber()).isTrue();
        assertThat(JsonForm.frequency(Double.POSITIVE_INFINITY).isNull()).isTrue();
    }

    @Test
    void anIntervalOfOneEndKeepsItsOther() {
        assertThat(JsonForm.interval(OptionalDouble.of(1.5), OptionalDouble.empty()))
                .hasToString("[1.5,null]");
        assertThat(JsonForm.interval(OptionalDouble.empty(), OptionalDouble.of(2.5)))
                .hasToString("[null,2.5]");
        assertThat(JsonForm.interval(OptionalDouble.of(1.5), OptionalDouble.of(2.5)))
                .hasToString("[1.5,2.5]");
        assertThat(JsonForm.interval(OptionalDouble.empty(), OptionalDouble.empty())
                        .isNull())
                .isTrue();
    }

    @Test
    void textsAndWhatIsAbsent() {
        assertThat(JsonForm.text(Optional.of("flood"))).hasToString("\"flood\"");
        assertThat(JsonForm.text(Optional.empty()).isNull()).isTrue();
        assertThat(JsonForm.texts(List.of("b", "a"))).hasToString("[\"b\",\"a\"]");
    }

    @Test
    void anObjectIsSortedAndEveryValueKeepsItsKind() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("unit", "dB");
        values.put("long", 4L);
        values.put("int", 3);
        values.put("flag", false);
        values.put("double", 2.5);
        values.put("bands", List.of(125.0, 31.5, List.of("x", true)));
        assertThat(JsonForm.object(values))
                .hasToString(
                        "{\"bands\":[125,31.5,[\"x\",true]],\"double\":2.5,\"flag\":false,\"int\":3,\"long\":4,\"unit\":\"dB\"}");
    }

    /** UTF-8, two spaces, line feeds; nothing inside what is empty. */
    @Test
    void theLayoutOfTheFile() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("a", "µ");
        values.put("b", List.of());
        assertThat(written(JsonForm.object(values))).isEqualTo("{\n  \"a\": \"µ\",\n  \"b\": []\n}\n");
        assertThat(written(JsonForm.object(Map.of()))).isEqualTo("{}\n");
        assertThat(written(JsonForm.inTurn(List.of(1.5, 2.5), JsonForm::number)))
                .isEqualTo("[\n  1.5,\n  2.5\n]\n");
    }
}
