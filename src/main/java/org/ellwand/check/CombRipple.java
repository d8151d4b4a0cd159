package org.ellwand.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.acoustics.Resolution;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Sound that reaches the eardrum twice: what leaks past the product, and what the product passes on later by its delay τ. The two
 * leave a {@link Ripple} in the attenuation, every 1/τ in Hz; with the leak 10 dB below, +2.4 and −3.3 dB (worked out from that
 * formula). Third octaves hide it, so it is looked for in twelfths. It is what the product does and no fault of measuring; claims of
 * an even tone rest on it. (1 dB, and a share of {@value #SHARE} of what the curve has beyond its average over an octave: common
 * practice, no source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class CombRipple implements DataCheck {
    private static final double DEPTH_DB = 1;
    private static final double SHARE = 0.5;

    @Override
    public String name() {
        return "comb ripple";
    }

    @Override
    public String needs() {
        return "attenuation in twelfth octaves";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Attenuations ears = material.attenuations();
        Map<Conditions, List<LevelCurve>> curves = new LinkedHashMap<>();
        for (CurveReading reading : material.inPlace()) {
            ears.of(reading)
                    .filter(curve -> Curves.isAsFineAs(Resolution.TWELFTH_OCTAVE, curve))
                    .ifPresent(curve -> curves.computeIfAbsent(
                                    reading.conditions().without(Sheets.REPEATS), k -> new ArrayList<>())
                            .add(curve));
        }
        curves.forEach((of, some) -> Ripple.of(Curves.mean(some)).ifPresent(ripple -> {
            tally.looked();
            if (ripple.depthDb() > DEPTH_DB && ripple.share() > SHARE) {
                tally.add(
                        of,
                        List.of(),
                        Errs.EITHER,
                        Consequence.NOTED,
                        new Measure(ripple.depthDb(), DEPTH_DB, "dB"),
                        Remark.of("comb-ripple")
                                .with("depth", ripple.depthDb())
                                .with("every", 1000 / ripple.delayMs())
                                .with("delay", ripple.delayMs()));
            }
        }));
        return tally.done();
    }
}
