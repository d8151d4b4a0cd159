package org.ellwand.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.ellwand.acoustics.Band;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the demo's data must show whatever the draws: facts of the trade, each with its source. */
class PhysicsTest {
    private static final Sound LOUD = Sound.pinkNoise(94);
    private static final List<Ear> EARS = List.of(Ear.CREW_01, Ear.CREW_02);
    private static final List<Device> DEVICES = List.of(new FilteredPlug(), new LevelDependentPlug());

    /** Better seal: 10 to 20 dB more below 500 Hz (common practice, no source), here as the mean of 125 to 400 Hz. */
    @Test
    void betterSealingTipAddsTenToTwentyDecibelsBelow500Hz() {
        for (Ear ear : EARS) {
            for (Device device : DEVICES) {
                double gained =
                        meanOver(125, 400, f -> gain(device, ear, Fit.FLANGE, f) - gain(device, ear, Fit.FOAM, f));
                assertThat(gained).as(device.name()).isBetween(10.0, 20.0);
            }
        }
    }

    /** A leak is a low-pass path: above 2 kHz the tips are alike. */
    @Test
    void tipsAreAlikeAbove2kHz() {
        for (Device device : DEVICES) {
            double gained = meanOver(
                    2000, 8000, f -> gain(device, Ear.CREW_01, Fit.FLANGE, f) - gain(device, Ear.CREW_01, Fit.FOAM, f));
            assertThat(gained).as(device.name()).isBetween(0.0, 1.0);
        }
    }

    /** Two settings of one insertion share seal and tube: their difference hardly scatters, either alone does. */
    @Test
    void settingsDifferMuchMoreFirmlyThanEitherIsKnown() {
        for (Device device : DEVICES) {
            Sitting sitting = new Sitting(Ear.CREW_01, device, 1);
            List<Double> flood = new ArrayList<>();
            List<Double> difference = new ArrayList<>();
            for (int insertion = 1; insertion <= 200; insertion++) {
                double first = mean(sitting.inPlace(LOUD, Fit.FOAM, "flood", insertion));
                flood.add(first);
                difference.add(first - mean(sitting.inPlace(LOUD, Fit.FOAM, "ebb", insertion)));
            }
            assertThat(deviation(difference)).isLessThan(deviation(flood) / 10);
            assertThat(deviation(flood)).isCloseTo(1.25, within(0.2));
        }
    }

    /** About 17 dB near 2.7 kHz in the average adult ear: Shaw (1974), from memory; ears differ by a few dB. */
    @Test
    void openEarsResonateNear2700Hz() {
        for (Ear ear : EARS) {
            double top = Bands.ALL.stream()
                    .mapToDouble(band -> ear.openGainDb(band.exactHz()))
                    .max()
                    .orElseThrow();
            assertThat(top).isBetween(14.0, 20.0);
            assertThat(ear.canalHz()).isBetween(2200.0, 3500.0);
            assertThat(ear.openGainDb(125)).isBetween(0.0, 1.0);
        }
    }

    @Test
    void pinkNoiseBandsAddUpToItsLevel() {
        double[] levels = Bands.ALL.stream()
                .mapToDouble(band -> LOUD.bandDb(band.exactHz()))
                .toArray();
        assertThat(Bands.energySumDb(levels)).isCloseTo(94, within(1e-9));
    }

    /** Compressive above its onset, so the louder the sound, the more it takes off; the filtered plug does not care. */
    @ParameterizedTest
    @EnumSource(Fit.class)
    void onlyTheElectronicPlugDependsOnLevel(Fit fit) {
        Device tide = DEVICES.get(1);
        Device skerry = DEVICES.get(0);
        assertThat(tide.gainDb(Ear.CREW_01, fit, "flood", 62, 1000) - tide.gainDb(Ear.CREW_01, fit, "flood", 94, 1000))
                .isGreaterThan(10);
        assertThat(skerry.gainDb(Ear.CREW_01, fit, "flood", 62, 1000))
                .isEqualTo(skerry.gainDb(Ear.CREW_01, fit, "flood", 94, 1000));
    }

    /** A band 15 dB above the background may be used as it is: every band with sound is, with foam, the quieter tip. */
    @Test
    void soundStaysFifteenDecibelsAboveTheFloor() {
        assertFloor(DEVICES.get(0), LOUD);
        assertFloor(DEVICES.get(1), Sound.pinkNoise(62));
    }

    private static void assertFloor(Device device, Sound sound) {
        Sitting sitting = new Sitting(Ear.CREW_01, device, 1);
        Curve loud = sitting.inPlace(sound, Fit.FOAM, "flood", 1);
        Curve floor = sitting.inPlace(Sound.quiet(), Fit.FOAM, "flood", 1);
        for (int i = 0; i < Bands.ALL.size(); i++) {
            assertThat(loud.levelsDb().get(i) - floor.levelsDb().get(i)).isGreaterThan(15);
        }
    }

    private static double gain(Device device, Ear ear, Fit fit, double frequencyHz) {
        return device.gainDb(ear, fit, "flood", 94, frequencyHz);
    }

    private static double meanOver(double fromHz, double toHz, ToDoubleFunction<Double> curve) {
        return Bands.ALL.stream()
                .filter(band -> band.nominalHz() >= fromHz && band.nominalHz() <= toHz)
                .map(Band::exactHz)
                .mapToDouble(curve)
                .average()
                .orElseThrow();
    }

    private static double mean(Curve curve) {
        return curve.levelsDb().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
    }

    private static double deviation(List<Double> values) {
        return new StandardDeviation()
                .evaluate(values.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
