package org.ellwand.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ConditionsTest {
    private static final Conditions FLOOD = Conditions.of(Map.of("ear", "left", "setting", "flood"));

    @Test
    void theSameNamesAndTextsAreTheSameHoweverTheyCameAbout() {
        Conditions grown = Conditions.of(Map.of("setting", "flood")).with("ear", "left");
        Conditions cut = FLOOD.with("fit", "foam").without(Set.of("fit"));
        Conditions chosen = FLOOD.with("unit", "7").only(Set.of("ear", "setting", "side"));
        assertThat(Set.of(FLOOD)).contains(grown, cut, chosen);
        assertThat(grown).isEqualTo(cut).isEqualTo(chosen).hasSameHashCodeAs(FLOOD);
    }

    @Test
    void anotherNameOrTextIsAnother() {
        assertThat(FLOOD.with("setting", "ebb")).isNotEqualTo(FLOOD);
        assertThat(Conditions.of(Map.of("ear", "left", "side", "flood"))).isNotEqualTo(FLOOD);
        assertThat(FLOOD.without(Set.of("ear"))).isNotEqualTo(FLOOD);
    }

    @Test
    void namesThatAreNotThereDoNoHarm() {
        assertThat(FLOOD.without(Set.of("fit"))).isSameAs(FLOOD);
        assertThat(FLOOD.only(Set.of("fit")).values()).isEmpty();
    }

    @Test
    void theyAreToldInTheOrderOfTheirNames() {
        assertThat(FLOOD.with("device", "Skerry")).hasToString("device=Skerry, ear=left, setting=flood");
        assertThat(FLOOD.get("ear")).contains("left");
        assertThat(FLOOD.get("fit")).isEmpty();
        assertThat(FLOOD.has("setting", "flood")).isTrue();
        assertThat(FLOOD.has("setting", "ebb")).isFalse();
    }
}
