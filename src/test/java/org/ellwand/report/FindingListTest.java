package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ellwand.check.Finding;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;

class FindingListTest {
    private static Finding leak(String session, int insertion) {
        return new Finding(
                "slit leak",
                session,
                "insertion=" + insertion,
                List.of(),
                Remark.of("leak-" + insertion),
                Finding.Errs.HIDES_ATTENUATION,
                Finding.Consequence.NOTED);
    }

    @Test
    void ofOneKindInOneSessionTheFirstStandForTheRest() {
        List<Finding> findings = Stream.concat(
                        IntStream.rangeClosed(1, 5).mapToObj(i -> leak("yard-1", i)), Stream.of(leak("yard-2", 1)))
                .toList();
        assertThat(FindingList.of(findings, 2, f -> Map.of("key", f.remark().key())))
                .extracting(Object::toString)
                .containsExactlyInAnyOrder("{key=leak-1, more=0}", "{key=leak-2, more=3}", "{key=leak-1, more=0}");
    }
}
