package org.ellwand.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Claims that so many insertions decide and no fewer: what is asked of the judge until that is found. */
class FewestInsertionsTest {
    /** Beyond the most: none decide. */
    private static final int NEVER = Outlooks.MOST + 1;

    /** The numbers of insertions that are judged, in turn. */
    private static List<Integer> asked(FewestInsertions search, int enough) {
        List<Integer> asked = new ArrayList<>();
        for (OptionalInt next = search.next(); next.isPresent(); next = search.next()) {
            asked.add(next.getAsInt());
            search.hear(next.getAsInt(), next.getAsInt() >= enough);
            assertThat(asked).as("no end").hasSizeLessThan(NEVER);
        }
        return asked;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 8, 9, 10, 11, 14, 17, 18, 19, 20})
    void theFewestEvenNumberThatIsEnoughIsFound(int enough) {
        FewestInsertions search = new FewestInsertions();
        asked(search, enough);
        assertThat(search.found()).isEqualTo((enough + 1) / 2 * 2);
    }

    @Test
    void whereTheMostAreNotEnoughTwoAnswersDo() {
        FewestInsertions search = new FewestInsertions();
        assertThat(asked(search, NEVER)).containsExactly(Outlooks.MOST, FewestInsertions.FEW);
        assertThat(search.found()).isGreaterThan(Outlooks.MOST);
    }

    /** An answer is an audit with so many insertions of everything that was measured. */
    @Test
    void nothingIsAskedTwiceAndInTenThatCouldBeAskedAtMostSixAre() {
        for (int enough = 1; enough <= NEVER; enough++) {
            assertThat(asked(new FewestInsertions(), enough))
                    .doesNotHaveDuplicates()
                    .hasSizeLessThanOrEqualTo(6);
        }
    }

    /** Claims are asked side by side: what one asks for in its third turn no other asks for in its fourth, or it were made twice. */
    @Test
    void everyNumberHasItsTurn() {
        Map<Integer, Integer> turns = new HashMap<>();
        for (int enough = 1; enough <= NEVER; enough++) {
            List<Integer> asked = asked(new FewestInsertions(), enough);
            for (int turn = 0; turn < asked.size(); turn++) {
                Integer before = turns.putIfAbsent(asked.get(turn), turn);
                assertThat(before).as("turn of %d insertions", asked.get(turn)).isIn(null, turn);
            }
        }
        assertThat(turns).hasSize(Outlooks.MOST / 2);
    }
}
