package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.demo.Bands;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.junit.jupiter.api.Test;

/** A floor of 30 dB in every band, and sounds that lie above it by what each test says. */
class BackgroundFloorTest {
    private static final double FLOOR_DB = 30;
    private static final Band ONE_KHZ = Band.nearest(Resolution.THIRD_OCTAVE, 1000);

    /** True levels as far above the floor as asked; what is read is the energy sum of both. */
    private static Session session(String device, double trueAboveDb) {
        return new MadeSession("yard")
                .pink(60)
                .quiet()
                .reading(device + ", stimulus=pink-60", f -> Bands.energySumDb(FLOOR_DB + trueAboveDb, FLOOR_DB))
                .reading(device + ", stimulus=hush", f -> FLOOR_DB)
                .session();
    }

    private static CurveReading first(Session session) {
        return Inspection.of(List.of(session)).sessions().get(0).readings().get(0);
    }

    private static List<Finding> findings(Session session) {
        return Inspection.of(List.of(session)).findings().stream()
                .filter(f -> f.check().equals(BackgroundFloor.NAME))
                .toList();
    }

    @Test
    void aLevelFarAboveItsBackgroundIsUsedAsItIs() {
        Session session = session("device=Skerry", 15);
        assertThat(first(session).spectrum())
                .isEqualTo(session.readings().get(0).spectrum());
        assertThat(findings(session)).isEmpty();
    }

    /** 10 lg(1 + 10^(−8/10)) = 0.639 dB of background come off again. */
    @Test
    void theEnergyOfANearBackgroundIsSubtracted() {
        Session session = session("device=Skerry", 8);
        assertThat(session.readings()
                        .get(0)
                        .spectrum()
                        .at(ONE_KHZ)
                        .orElseThrow()
                        .levelDb())
                .isCloseTo(38.639, within(0.001));
        assertThat(first(session).spectrum().at(ONE_KHZ)).hasValueSatisfying(level -> {
            assertThat(level.levelDb()).isCloseTo(38, within(1e-9));
            assertThat(level.bound()).isEqualTo(Bound.MEASURED);
        });
        assertThat(findings(session)).singleElement().satisfies(f -> {
            assertThat(f.consequence()).isEqualTo(Finding.Consequence.WIDENED);
            assertThat(f.errs()).isEqualTo(Finding.Errs.HIDES_ATTENUATION);
            assertThat(f.bands()).hasSize(21).startsWith(100.0).endsWith(10000.0);
            assertThat(f.reading()).isEqualTo("device=Skerry, ear=crew-01-left, stimulus=pink-60");
            assertThat(f.text())
                    .isEqualTo("8.6 dB above the background where it is nearest, less than 15 dB: the background is"
                            + " subtracted and the uncertainty grows");
        });
    }

    /** 1.26 dB: the largest correction of ISO 3744, from memory. */
    @Test
    void aLevelAtItsBackgroundIsABoundThatHoldsTheTrueOne() {
        Session session = session("device=Skerry", 2);
        Spectrum.Level level = first(session).spectrum().at(ONE_KHZ).orElseThrow();
        assertThat(level.bound()).isEqualTo(Bound.AT_MOST);
        assertThat(level.levelDb())
                .isCloseTo(
                        session.readings()
                                        .get(0)
                                        .spectrum()
                                        .at(ONE_KHZ)
                                        .orElseThrow()
                                        .levelDb()
                                - 1.26,
                        within(0.01))
                .isGreaterThan(FLOOR_DB + 2);
        assertThat(findings(session))
                .singleElement()
                .satisfies(f -> assertThat(f.consequence()).isEqualTo(Finding.Consequence.BOUNDED));
    }

    @Test
    void anOpenEarAtItsBackgroundIsLeftOut() {
        Session session = session("device=open ear", 2);
        assertThat(first(session).spectrum().bandList()).isEmpty();
        assertThat(findings(session)).singleElement().satisfies(f -> {
            assertThat(f.consequence()).isEqualTo(Finding.Consequence.UNUSABLE);
            assertThat(f.errs()).isEqualTo(Finding.Errs.INVENTS_ATTENUATION);
        });
    }

    @Test
    void theInsertionsOwnBackgroundGoesFirst() {
        Session session = new MadeSession("yard")
                .pink(60)
                .quiet()
                .reading("device=Skerry, stimulus=pink-60, insertion=1", f -> 45)
                .reading("device=Skerry, stimulus=hush, insertion=1", f -> 36)
                .reading("device=Skerry, stimulus=hush, insertion=2", f -> 20)
                .session();
        assertThat(findings(session))
                .singleElement()
                .satisfies(f -> assertThat(f.measure().orElseThrow().figure()).isCloseTo(9, within(1e-9)));
    }

    @Test
    void aReadingInQuietIsNotCorrectedByItself() {
        Session session = session("device=Skerry", 2);
        CurveReading quiet =
                Inspection.of(List.of(session)).sessions().get(0).readings().get(1);
        assertThat(quiet).isEqualTo(session.readings().get(1));
    }

    @Test
    void withoutAReadingInQuietNothingIsChecked() {
        Session session = new MadeSession("yard")
                .pink(60)
                .reading("device=Skerry, stimulus=pink-60", f -> 45)
                .session();
        Inspection inspection = Inspection.of(List.of(session));
        assertThat(inspection.notChecked())
                .contains(new NotChecked(BackgroundFloor.NAME, "yard", "no reading in quiet of Skerry"));
        assertThat(first(session)).isEqualTo(session.readings().get(0));
    }
}
