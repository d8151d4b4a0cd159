package org.ellwand.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.ellwand.acoustics.Resolution;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;

/** The invented sessions that come with the project. */
class DemoSessionsTest {
    @Test
    void areReadWithoutAProblem() throws InputException {
        List<Session> sessions = SessionReader.readAll(Path.of(""));
        assertThat(sessions)
                .extracting(Session::id)
                .contains("skerry-crew-01", "skerry-crew-02", "tide-crew-01", "tide-crew-02");
        assertThat(sessions)
                .allSatisfy(session -> assertThat(
                                session.dataFiles().size() + session.figures().size())
                        .isPositive());
    }

    /** Three sheets of columns: nine open-ear and field curves, eighteen in place for each of two tips. */
    @Test
    void aSessionOfThreeSheets() throws InputException {
        Session session = SessionReader.read(Path.of(""), "measurements/skerry-crew-02.yaml");
        assertThat(session.resolution()).contains(Resolution.THIRD_OCTAVE);
        assertThat(session.readings().stream().filter(Reading::isFieldMicrophone))
                .hasSize(3);
        assertThat(session.readings().stream().filter(Reading::isOpenEar)).hasSize(6);
        assertThat(session.readings().stream().filter(Reading::isInPlace)).hasSize(36);
        assertThat(session.readings())
                .filteredOn(reading -> !reading.isInPlace())
                .allSatisfy(reading -> assertThat(reading.conditions().values().keySet())
                        .doesNotContainAnyElementsOf(Set.of("setting", "fit", "firmware", "unit", "insertion")));
    }
}
