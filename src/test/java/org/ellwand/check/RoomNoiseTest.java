package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.measurement.Session;
import org.junit.jupiter.api.Test;

/** A room of 25 dB in every band, read with the open ear alone. */
class RoomNoiseTest {
    private static MadeSession room() {
        return new MadeSession("yard").pink(62).quiet().reading("device=open ear, stimulus=hush", f -> 25);
    }

    private static List<Finding> findings(Session session) {
        return Inspecting.by(new RoomNoise(), List.of(session));
    }

    @Test
    void aLevelNearTheRoomMayBeTheRooms() {
        Session session = room().reading(
                        "device=Skerry, setting=flood, stimulus=pink-62, insertion=1", f -> f == 1000 ? 28 : 32)
                .session();
        assertThat(findings(session)).singleElement().satisfies(finding -> {
            assertThat(finding.bands()).containsExactly(1000.0);
            assertThat(finding.errs()).isEqualTo(Errs.HIDES_ATTENUATION);
            assertThat(finding.consequence()).isEqualTo(Consequence.BOUNDED);
            assertThat(finding.reading()).contains("setting=flood").doesNotContain("insertion");
            assertThat(finding.text())
                    .isEqualTo(
                            "3.0 dB above the open ear in quiet where it is nearest, less than 6 dB, and not read in quiet"
                                    + " itself: room and probe may be most of it, and the level is at most what was read");
        });
    }

    @Test
    void aProductThatWasReadInQuietHasItsOwnBackground() {
        Session session = room().reading("device=Skerry, setting=flood, stimulus=pink-62", f -> 28)
                .reading("device=Skerry, setting=flood, stimulus=hush", f -> 10)
                .session();
        assertThat(findings(session)).isEmpty();
        assertThat(Inspecting.checked(new RoomNoise(), List.of(session)).made()).isFalse();
    }

    @Test
    void theRoomOfOneEarIsNotThatOfAnother() {
        Session session = room().reading("device=Skerry, ear=crew-01-right, setting=flood, stimulus=pink-62", f -> 28)
                .session();
        assertThat(findings(session)).isEmpty();
    }
}
