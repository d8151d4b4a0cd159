package org.ellwand.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What planned files are called; the product names are invented. */
class TextTest {
    @Test
    void aFileIsCalledByTheSmallLettersAndDigitsOfAName() {
        assertThat(Text.slug("Skerry Tide (2.1) bench")).isEqualTo("skerry-tide-2-1-bench");
        assertThat(Text.slug("+ Skerry +")).isEqualTo("skerry");
    }

    /** One planned file is not to replace another. */
    @Test
    void namesThatDifferInOtherLettersAloneGiveFilesOfDifferentNames() {
        assertThat(Text.slug("Größe bench")).matches("gr-e-bench-[0-9a-f]+").isNotEqualTo(Text.slug("Grüße bench"));
        assertThat(Text.slug("приливный")).matches("[0-9a-f]+").isNotEqualTo(Text.slug("отливный"));
    }
}
